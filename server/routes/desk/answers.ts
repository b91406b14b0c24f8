/** What the desk's routes share: parts of addresses and bodies. */
import express from 'express';
import { z } from 'zod';

export const id = z.coerce.number().int().positive();
/** The revision that the person had before them: decisions on anything older are refused. */
export const revision = z.number().int().min(0);
/** Which part of a long list. */
export const pageSchema = z.object({
  after: z.coerce.number().int().min(0).default(0),
  most: z.coerce.number().int().min(1).max(500).default(200),
});
export const withId = z.object({ id });

export const json = express.json({ limit: '1mb', strict: true });
