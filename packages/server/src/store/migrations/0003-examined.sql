-- One row for each examination: what the desk's figures count and planning asks, so that no question opens a state.
-- `last_result` of a colony is the word last stated. Both fill as states are folded again: colonies are marked for it.

create table combside.examined (
  examination uuid primary key,
  colony uuid not null,
  visit uuid not null,
  -- Where the colony stood when it was looked at.
  apiary uuid not null,
  observed_at timestamptz,
  depth text not null,
  hive_state text not null,
  frames_seen integer not null,
  frames_held integer not null,
  -- Of its newest assessment; null where none was stated.
  result text,
  suspected text[] not null,
  basis text,
  finds text[] not null
);
create index examined_colony on combside.examined (colony);
create index examined_apiary on combside.examined (apiary, observed_at);
create index examined_time on combside.examined (observed_at);
create index examined_visit on combside.examined (visit);
create index examined_suspect on combside.examined (apiary) where result in ('suspect', 'remains suspect');

alter table combside.states add column last_result text;
create index states_suspect on combside.states (apiary)
  where entity_type = 'colony' and last_result in ('suspect', 'remains suspect');
update combside.states set fold_version = 0 where entity_type = 'colony';
