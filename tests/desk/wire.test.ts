import { describe, expect, it } from 'vitest';
import { addressOf, ROUTES } from '../../src/desk/wire.ts';

describe('the table of the desk’s routes', () => {
  it('gives the address with its parts filled in, and nothing for what is left out', () => {
    expect(addressOf(ROUTES.mark, { params: { id: 7, criterion: 'part writing' } })).toBe(
      '/api/desk/scripts/7/marks/part%20writing',
    );
    expect(addressOf(ROUTES.remarks, { query: { typed: 'a & b', rule: undefined } })).toBe(
      '/api/desk/remarks?typed=a%20%26%20b',
    );
    expect(addressOf(ROUTES.stacks, {})).toBe('/api/desk/stacks');
  });

  it('has each method and path once, and a parameter for each part of a path', () => {
    const routes = Object.values(ROUTES);
    expect(new Set(routes.map(({ method, path }) => `${method} ${path}`)).size).toBe(routes.length);
    for (const { path, params } of routes) {
      const named = [...path.matchAll(/:(\w+)/g)].map(([, name]) => name);
      expect(Object.keys(params.shape).sort()).toEqual(named.sort());
    }
  });

  it('reads numbers from an address and refuses what is none', () => {
    expect(ROUTES.stack.query.parse({ after: '200' })).toEqual({ after: 200, most: 50 });
    expect(ROUTES.stack.params.safeParse({ id: 'x' }).success).toBe(false);
    expect(ROUTES.stack.query.safeParse({ most: '501' }).success).toBe(false);
  });
});
