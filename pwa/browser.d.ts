// What browsers have and the type checker's own tables lack, as far as we use it. Phones do not get it.

/** https://wicg.github.io/shape-detection-api/#barcode-detection-api */
interface LabelDetector {
  detect(source: HTMLVideoElement): Promise<Array<{ rawValue: string }>>;
}
declare var BarcodeDetector:
  | { new (options: { formats: string[] }): LabelDetector; getSupportedFormats(): Promise<string[]> }
  | undefined;

/** Chromium's offer to put the app on the home screen. https://wicg.github.io/manifest-incubations/ */
interface BeforeInstallPromptEvent extends Event {
  prompt(): Promise<unknown>;
}

/** `self` in the service worker; the type checker takes it for a page's. */
type ServiceWorkerSelf = ServiceWorkerGlobalScope & typeof self;

interface Navigator {
  /** On iPhones: opened from the home screen. */
  readonly standalone?: boolean;
}

interface ServiceWorkerRegistration {
  /** https://wicg.github.io/background-sync/spec/ */
  readonly sync?: { register(tag: string): Promise<void> };
}

/** https://w3c.github.io/ServiceWorker/#installevent */
interface WorkerInstallEvent extends ExtendableEvent {
  addRoutes?(routes: object): Promise<void>;
}

/** https://notifications.spec.whatwg.org/#dictdef-notificationaction */
interface NotificationOptions {
  actions?: Array<{ action: string; title: string }>;
}
