// Looking for a label with the camera: the browser's own detector where there is one, else the vendored decoder.
const EVERY_MS = 160;
const SIDE_PX = 480;

/** @returns {Promise<(source: HTMLVideoElement) => Promise<string>>} gives '' while nothing is seen */
async function makeReader() {
  const Native = globalThis.BarcodeDetector;
  if (Native && (await Native.getSupportedFormats()).includes('qr_code')) {
    const detector = new Native({ formats: ['qr_code'] });
    return async (video) => (await detector.detect(video))[0]?.rawValue ?? '';
  }
  const { default: decode } = await import('qr/decode.js');
  const canvas = document.createElement('canvas');
  canvas.width = canvas.height = SIDE_PX;
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d', { willReadFrequently: true }));
  return async (video) => {
    const side = Math.min(video.videoWidth, video.videoHeight);
    pen.drawImage(
      video,
      (video.videoWidth - side) / 2,
      (video.videoHeight - side) / 2,
      side,
      side,
      0,
      0,
      SIDE_PX,
      SIDE_PX,
    );
    try {
      return decode(pen.getImageData(0, 0, SIDE_PX, SIDE_PX));
    } catch {
      return ''; // no code in this picture
    }
  };
}

/**
 * Show the camera in `video` and call `onText` with each code seen, until `left` says so: also while the browser still
 * asks whether the camera may be used.
 * @param {HTMLVideoElement} video @param {(text: string) => void} onText @param {AbortSignal} left
 * @returns {Promise<void>} rejects where there is no camera or no leave to use it
 */
export async function watchForCodes(video, onText, left) {
  const stream = await navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' }, audio: false });
  const stop = () => stream.getTracks().forEach((track) => track.stop());
  if (left.aborted) {
    stop();
    return;
  }
  left.addEventListener('abort', stop);
  video.srcObject = stream;
  try {
    const read = await makeReader();
    await video.play();
    const look = async () => {
      if (left.aborted) return;
      const text = video.videoWidth ? await read(video).catch(() => '') : '';
      if (text && !left.aborted) onText(text);
      setTimeout(() => void look(), EVERY_MS);
    };
    void look();
  } catch (problem) {
    stop();
    throw problem;
  }
}
