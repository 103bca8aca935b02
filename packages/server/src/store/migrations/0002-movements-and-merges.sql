-- Movements stand at two apiaries: `apiary` is where they came from, `other_apiary` where they went. A keeper or apiary
-- that is read as part of another names it in `merged_into`. Both columns fill as states are folded again.

alter table combside.states add column other_apiary uuid;
alter table combside.states add column merged_into uuid;
create index states_other_apiary on combside.states (other_apiary, happened_at desc nulls last)
  where other_apiary is not null;
create index states_merged_into on combside.states (merged_into) where merged_into is not null;
