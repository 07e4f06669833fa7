// What the type checker needs to know of the vendored libraries: only what we use.
declare module 'preact' {
  export interface VNode { type: unknown; props: object }
  export type ComponentChildren = VNode | string | number | boolean | null | undefined | ComponentChildren[];
  export function h(type: unknown, props?: object | null, ...children: ComponentChildren[]): VNode;
  export function render(node: VNode, parent: Element): void;
  export const Fragment: unknown;
}
declare module 'preact/hooks' {
  export function useState<T>(initial: T | (() => T)): [T, (next: T | ((before: T) => T)) => void];
  export function useEffect(effect: () => void | (() => void), inputs?: unknown[]): void;
  export function useRef<T>(initial: T): { current: T };
  export function useMemo<T>(make: () => T, inputs: unknown[]): T;
  export function useCallback<T extends (...given: never[]) => unknown>(call: T, inputs: unknown[]): T;
}
declare module 'htm' {
  const htm: { bind(h: unknown): (strings: TemplateStringsArray, ...values: unknown[]) => import('preact').VNode };
  export default htm;
}
declare module '@preact/signals' {
  export interface Signal<T> { value: T; peek(): T }
  export interface ReadonlySignal<T> { readonly value: T; peek(): T }
  export function signal<T>(value: T): Signal<T>;
  export function computed<T>(make: () => T): ReadonlySignal<T>;
  export function effect(run: () => void): () => void;
  export function batch<T>(run: () => T): T;
}
declare module 'qr' {
  export default function encodeQR(text: string, output: 'svg', options?: { ecc?: 'low' | 'medium' | 'quartile' | 'high'; border?: number; optimize?: boolean }): string;
}
declare module 'qr/decode.js' {
  export default function decodeQR(image: { width: number; height: number; data: Uint8ClampedArray }): string;
}
