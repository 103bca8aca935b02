-- The register's own questions. `unsettled`: a contested value or a proposed change waits for somebody's word.
-- `search` holds more now (numbers, telephone, mail): keepers, apiaries and colonies are marked to be folded again.

alter table combside.states add column unsettled boolean not null default false;
create index states_unsettled on combside.states (entity_type, entity_id) where unsettled;
-- Words shorter than three letters have no trigram; they are looked for at the beginning of names.
create index states_name_start on combside.states (entity_type, lower(name) text_pattern_ops);
update combside.states set fold_version = 0 where entity_type in ('keeper', 'apiary', 'colony');
