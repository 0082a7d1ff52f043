/**
 * No island here is given signals as props: those come through modules. The renderer's client is ready for them all the same
 * and keeps the whole of @preact/signals, and a runtime for it, on every page with an island; without that branch 0.7 kB less.
 */
const asks = 'element.dataset.preactSignals;';

export function plainProps() {
  return {
    name: 'plain-props',
    transform(code, id) {
      if (!/@astrojs\/preact\/dist\/client\.js/.test(id)) return null;
      if (!code.includes(asks))
        throw new Error('the client of @astrojs/preact has changed: look again at what it loads');
      return { code: code.replace(asks, '"";'), map: null };
    },
  };
}
