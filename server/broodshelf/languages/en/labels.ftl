## The words of the labels and of the screen that reads them.

label-title = Tube labels
label-about = Print the sheet, cut, and tape one to each tube. Scanned or typed inside the app, a label opens that colony’s log, without a connection too.
label-print = Print the sheet
label-choose = Labels for
label-scan = Scan a label
label-scan-title = Scan a label
label-typed = Or type the code under it
label-open = Open
label-unknown = No colony on this phone has this code.
label-camera = Hold the label in front of the camera.
label-no-camera = The camera cannot be used here. Type the code instead.
label-start = Start the camera
label-foreign = This code is not a label of this shelf.
label-several = Several colonies fit:
