// The part of @fluent/bundle (vendored in this folder) that the room of words uses.
export type Pattern = unknown;
export interface FluentValue {
  valueOf(): unknown;
}
export class FluentNumber implements FluentValue {
  constructor(value: number, options?: Intl.NumberFormatOptions);
  valueOf(): number;
}
export class FluentResource {
  constructor(source: string);
}
export class FluentBundle {
  constructor(
    locales: string | string[],
    options?: {
      useIsolating?: boolean;
      functions?: Record<string, (given: FluentValue[], named: Record<string, FluentValue>) => unknown>;
    },
  );
  getMessage(id: string): { value: Pattern | null; attributes: Record<string, Pattern> } | undefined;
  addResource(resource: FluentResource): Error[];
  formatPattern(pattern: Pattern, args?: Record<string, unknown> | null, errors?: Error[] | null): string;
}
