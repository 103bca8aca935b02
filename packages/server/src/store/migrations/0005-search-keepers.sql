-- Keepers get a word index of their own: a word that stands in a hundred thousand apiaries and in no keeper would else be
-- looked up in all of them to find none.

create index states_search_keepers on combside.states using gin (search gin_trgm_ops)
  where entity_type = 'keeper' and search is not null;
