/** Lets the app's modules run in Node: `vendor/` is filled by the build, so its names are led to the npm packages. */
import { registerHooks } from 'node:module';

const root = new URL('../../../', import.meta.url);
const PACKAGES = {
  '/static/app/vendor/idb.js': 'node_modules/idb/build/index.js',
  '/static/app/vendor/preact.js': 'node_modules/htm/preact/standalone.module.js',
};

registerHooks({
  resolve(specifier, context, next) {
    if (specifier.startsWith('.') && context.parentURL) {
      const { pathname } = new URL(specifier, context.parentURL);
      for (const [place, file] of Object.entries(PACKAGES)) {
        if (pathname.endsWith(place)) return { url: new URL(file, root).href, format: 'module', shortCircuit: true };
      }
    }
    return next(specifier, context);
  },
});
