import type { Plugin } from 'vite';

const makers = /[/]zod[/]v4[/]core[/](json-schema-processors|to-json-schema)[.]js$/;

/**
 * Leaves out of what a browser loads the part of the schema library that writes JSON Schema: a tenth of the library, in
 * the page and again in the sync worker, and no page asks for it. Were it asked for, it would throw and say why.
 */
export function withoutJsonSchema(): Plugin {
  return {
    name: 'without-json-schema',
    enforce: 'pre',
    transform(code, id) {
      if (!makers.test(id)) return null;
      const names = [...code.matchAll(/^export (?:const|function) (\w+)/gm)].map(([, name]) => name);
      if (names.length === 0) throw new Error(`${id} exports in another way than this plugin reads`);
      return {
        code: [
          "const refuse = () => { throw new Error('JSON Schema is left out of the pages: see without-json-schema.ts'); };",
          ...names.map((name) => `export const ${name} = () => refuse;`),
        ].join('\n'),
        map: null,
      };
    },
  };
}
