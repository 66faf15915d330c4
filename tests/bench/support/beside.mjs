// A page of nothing but one CSS animation, for comparison: a dot of the same size on the same way.

/** Fills `page`: the dot moves without end, by a style sheet alone. */
export function bareAnimation(page, { width, dot, seconds }) {
  return page.setContent(`<!doctype html><title>bare</title><style>
    body { margin: 0; background: #1c2326; overflow: hidden; }
    i { position: fixed; top: 50%; left: 50%; width: ${dot}px; height: ${dot}px; margin: ${-dot / 2}px; border-radius: 50%; background: #d9c9a3;
      animation: go ${seconds / 2}s ease-in-out infinite alternate; }
    @keyframes go { from { transform: translate(${-width / 2}px, 0); } to { transform: translate(${width / 2}px, 0); } }
  </style><i></i>`);
}
