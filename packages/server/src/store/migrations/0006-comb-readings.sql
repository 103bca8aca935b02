-- What the server's own reader makes of stored photographs of combs. A proposal of the machine: no entry of the record, and
-- no evidence, until a person accepts it on a device of theirs.

create table combside.comb_readings (
  photograph text not null,
  -- A newer reader reads anew, beside what the older one said.
  reader_version integer not null,
  state text not null check (state in ('waiting', 'reading', 'read', 'refused', 'failed')),
  asked_at timestamptz not null,
  -- Until when a begun reading is left to whoever began it.
  begun_until timestamptz,
  attempts integer not null default 0,
  finished_at timestamptz,
  -- Why it was refused, or what the reading cannot say: ids.
  reasons text[] not null default '{}',
  -- The machine's part of a reading, as the record would keep it; null unless read.
  part jsonb,
  primary key (photograph, reader_version)
);

create index comb_readings_open on combside.comb_readings (asked_at) where state in ('waiting', 'reading');
