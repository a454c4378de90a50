// The custom element: hands its life to the widget and holds no logic of its own.
export function define(widget) {
  if (customElements.get(widget.tag())) return;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(widget.styles());
  customElements.define(widget.tag(), class extends HTMLElement {
    static observedAttributes = widget.observed();
    #id = 0;
    connectedCallback() {
      const root = this.shadowRoot ?? this.attachShadow({ mode: "open", delegatesFocus: true });
      root.adoptedStyleSheets = [sheet];
      if (this.#id) return; // only moved within the page
      const slot = document.createElement("div");
      slot.part = "root";
      root.replaceChildren(slot);
      this.#id = widget.mount(this, slot);
    }
    disconnectedCallback() {
      queueMicrotask(() => { // a move is a disconnect and a connect: keep what is shown
        if (this.isConnected || !this.#id) return;
        widget.unmount(this.#id);
        this.#id = 0;
        this.shadowRoot.replaceChildren();
      });
    }
    attributeChangedCallback(name, _old, value) {
      if (this.#id) widget.update(this.#id, name, value ?? undefined);
    }
  });
}
