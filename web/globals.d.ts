// Put in by tools/build.mjs when the page is bundled.

declare const ADDRESSES: {
  program: { first: string; rest: string };
  demo: string;
  fonts: Record<number, string>;
};
declare const FILES: { url: string; revision: string | null }[];

/** The compiled program's loader. */
declare module 'program' {
  export default function createApp(options: {
    host: object;
    instantiateWasm: (
      imports: WebAssembly.Imports,
      done: (instance: WebAssembly.Instance) => void,
    ) => object;
  }): Promise<import('./types').Program>;
}
