// The part of idb (vendored as idb.js) that the database room uses.
export interface KeyCursor {
  key: any;
  advance(count: number): Promise<KeyCursor | null>;
}
export interface Store {
  get(key: any): Promise<any>;
  getAll(query?: any, count?: number): Promise<any[]>;
  getAllKeys(query?: any, count?: number): Promise<any[]>;
  put(value: any, key?: any): Promise<any>;
  delete(key: any): Promise<void>;
  clear(): Promise<void>;
  count(key?: any): Promise<number>;
  index(name: string): {
    getAll(query?: any, count?: number): Promise<any[]>;
    getAllKeys(query?: any, count?: number): Promise<any[]>;
    openKeyCursor(query?: any, direction?: 'next' | 'prev'): Promise<KeyCursor | null>;
  };
}
export interface Transaction {
  objectStore(name: string): Store;
  done: Promise<void>;
  abort(): void;
  commit(): void;
}
export interface Database {
  transaction(stores: string[], mode: 'readonly' | 'readwrite', options?: { durability?: 'strict' | 'relaxed' | 'default' }): Transaction;
  createObjectStore(name: string, options?: any): any;
  close(): void;
}
export function openDB(
  name: string,
  version: number,
  callbacks: {
    upgrade?(db: Database, oldVersion: number): void;
    blocked?(): void;
    blocking?(current: number, blocked: number | null, event: any): void;
    terminated?(): void;
  },
): Promise<Database>;
/** The browser's own store, for many writes that nobody waits for one by one. */
export function unwrap(store: Store): IDBObjectStore;
export function deleteDB(name: string): Promise<void>;
