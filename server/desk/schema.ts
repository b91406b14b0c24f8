/** The tables of a desk, as steps from one version of the file to the next. A step, once released, is never changed. */

/** Written into the file, so that another program's database is not taken for a desk. */
export const APPLICATION_ID = 0x50574445;

export const MIGRATIONS: readonly string[] = [
  `
  CREATE TABLE stacks (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    created TEXT NOT NULL,
    brief TEXT,
    profile TEXT NOT NULL,
    scheme TEXT NOT NULL,
    pattern TEXT,
    reference TEXT,
    -- Raised by every decision that holds for the whole stack.
    revision INTEGER NOT NULL DEFAULT 0
  );
  CREATE TABLE scripts (
    id INTEGER PRIMARY KEY,
    stack INTEGER NOT NULL REFERENCES stacks(id),
    file TEXT NOT NULL,
    sum TEXT NOT NULL,
    candidate TEXT,
    draft INTEGER NOT NULL DEFAULT 1,
    received TEXT NOT NULL,
    content BLOB NOT NULL,
    -- What is kept of the review, or why the file could not be read: one of the two.
    facts TEXT,
    error TEXT,
    -- 1 where the failure was ours: the next run tries the file again.
    again INTEGER NOT NULL DEFAULT 0,
    -- How the given notes were kept, where there is a brief.
    given TEXT,
    faults INTEGER NOT NULL DEFAULT 0,
    queries INTEGER NOT NULL DEFAULT 0,
    remarks INTEGER NOT NULL DEFAULT 0,
    done INTEGER NOT NULL DEFAULT 0,
    -- Raised by every decision about this script, so that two tabs notice each other.
    revision INTEGER NOT NULL DEFAULT 0,
    UNIQUE (stack, file, sum)
  );
  CREATE INDEX scripts_by_candidate ON scripts (stack, candidate, draft);
  CREATE TABLE decisions (
    number INTEGER PRIMARY KEY AUTOINCREMENT,
    id TEXT NOT NULL UNIQUE,
    stack INTEGER NOT NULL REFERENCES stacks(id),
    -- Empty for a decision about the whole stack.
    script INTEGER REFERENCES scripts(id),
    decision TEXT NOT NULL
  );
  CREATE INDEX decisions_by_script ON decisions (stack, script);
  CREATE TABLE marks (
    number INTEGER PRIMARY KEY AUTOINCREMENT,
    script INTEGER NOT NULL REFERENCES scripts(id),
    criterion TEXT NOT NULL,
    -- Empty where a mark was taken back.
    mark TEXT
  );
  CREATE INDEX marks_by_script ON marks (script, criterion);
  CREATE TABLE settings (name TEXT PRIMARY KEY, value TEXT NOT NULL);
  CREATE TABLE sessions (id TEXT PRIMARY KEY, expires INTEGER NOT NULL, session TEXT NOT NULL);
  `,
  // Facts of version 2 leave given notes out: all scripts are reviewed again, decisions stay.
  'UPDATE scripts SET again = 1',
  `
  -- 1 where a person said whose it is: file names have no say in it any more.
  ALTER TABLE scripts ADD COLUMN by_hand INTEGER NOT NULL DEFAULT 0;
  UPDATE scripts SET by_hand = 1 WHERE candidate IS NOT NULL AND instr(lower(file), lower(candidate)) = 0
    AND instr(lower(coalesce(json_extract(facts, '$.title'), '')), lower(candidate)) = 0;
  -- Files that are no scripts.
  CREATE TABLE apart (
    stack INTEGER NOT NULL REFERENCES stacks(id),
    file TEXT NOT NULL,
    sum TEXT NOT NULL,
    UNIQUE (stack, file, sum)
  );
  `,
  `
  -- Two markers: 'open' where the second sees the first's marks, 'blind' where not; empty for one marker.
  ALTER TABLE stacks ADD COLUMN second TEXT;
  -- Who gave the mark or took it back; 1 where two markers agreed on it.
  ALTER TABLE marks ADD COLUMN marker TEXT;
  ALTER TABLE marks ADD COLUMN agreed INTEGER NOT NULL DEFAULT 0;
  UPDATE marks SET marker = json_extract(mark, '$.by') WHERE mark IS NOT NULL;
  `,
  `
  -- Which lines sing which voices, as typed: S=1,A=2,T=3,B=4. Empty where nobody said.
  ALTER TABLE stacks ADD COLUMN voices TEXT;
  ALTER TABLE scripts ADD COLUMN voices TEXT;
  `,
  `
  -- What lists need, in an index of its own: behind a row stand its file and its facts, which no list may read.
  ALTER TABLE scripts ADD COLUMN title TEXT NOT NULL DEFAULT '';
  UPDATE scripts SET title = coalesce(json_extract(facts, '$.title'), '') WHERE facts IS NOT NULL;
  DROP INDEX scripts_by_candidate;
  CREATE INDEX scripts_listed ON scripts (stack, candidate, draft, file, title, received, error, again,
    faults, queries, remarks, voices, done, by_hand, revision);
  CREATE INDEX scripts_by_content ON scripts (stack, sum, again, file);
  -- What the class picture and the comparison of scripts need of the facts. A row that is missing is made from them.
  CREATE TABLE kept (
    script INTEGER PRIMARY KEY REFERENCES scripts(id),
    figures TEXT NOT NULL,
    print TEXT NOT NULL,
    -- Raised with each row written, so that it shows whether any has changed.
    version INTEGER NOT NULL
  );
  `,
  `
  CREATE INDEX kept_by_version ON kept (version);
  -- What each script brings to the class picture. A row that is missing is counted when the picture is asked for.
  CREATE TABLE tallies (
    script INTEGER PRIMARY KEY REFERENCES scripts(id),
    -- The rules that found something, in JSON: a decision on one of them for the whole class has the script counted again.
    rules TEXT NOT NULL,
    -- Empty where it is to be counted again.
    tally TEXT
  );
  `,
];
