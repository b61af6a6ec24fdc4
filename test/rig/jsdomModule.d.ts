declare module "jsdom" {
  /** As far as the tests use it. */
  export class JSDOM {
    constructor(html: string);
    readonly window: { readonly DOMParser: typeof DOMParser; readonly XMLSerializer: typeof XMLSerializer };
  }
}
