// The words of the labels and of the screen that reads them, which are fetched when they are opened.
export const labelsText = {
  title: 'Tube labels',
  about:
    'Print the sheet, cut, and tape one to each tube. Scanned or typed inside the app, a label opens that ' +
    'colony’s log, without a connection too.',
  print: 'Print the sheet',
  choose: 'Labels for',
  scan: 'Scan a label',
  scan_title: 'Scan a label',
  typed: 'Or type the code under it',
  open: 'Open',
  unknown: 'No colony on this phone has this code.',
  camera: 'Hold the label in front of the camera.',
  no_camera: 'The camera cannot be used here. Type the code instead.',
  start: 'Start the camera',
  foreign: 'This code is not a label of this shelf.',
  several: 'Several colonies fit:',
};
