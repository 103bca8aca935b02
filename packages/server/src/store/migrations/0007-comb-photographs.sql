-- One row for each photograph taken at a colony's combs, with the reading kept of it: what the office's list of comb
-- photographs asks. It fills as states are folded again: colonies are marked for it.

create table combside.comb_photographs (
  colony uuid not null,
  hash text not null,
  visit uuid not null,
  -- Where the colony stood when it was photographed.
  apiary uuid not null,
  taken_at timestamptz not null,
  caption text not null,
  -- Of the reading kept; null where none is.
  accepted boolean,
  primary key (colony, hash)
);
create index comb_photographs_time on combside.comb_photographs (taken_at, hash, colony);
create index comb_photographs_open on combside.comb_photographs (taken_at, hash, colony) where accepted is null;
create index comb_photographs_apiary on combside.comb_photographs (apiary, taken_at, hash, colony);
create index comb_photographs_visit on combside.comb_photographs (visit, taken_at, hash, colony);
create index comb_photographs_hash on combside.comb_photographs (hash);
update combside.states set fold_version = 0 where entity_type = 'colony';
