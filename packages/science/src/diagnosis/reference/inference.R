# Independent reference for diagnosis/inference.ts: the full joint, state by state, in another language.
#
# Run:  Rscript inference.R > inference.json      (base R only; made with R 4.2.2)
#
# A sign is graded; each cause present and a background produce a grade of their own, each noticed with the chance of that
# grade, and the highest noticed grade shows. Here P(highest = g) is the difference of two products, computed in logarithms
# with log1p and expm1; the implementation carries the difference along instead.
# Domain covered: one to ten variables of two or three levels, signs of one to three grades, seen with a grade, seen
# without one, not seen, signs of healthy brood, chances from 0.001 to 0.95, noticed from 0 (not seen only) to 1.

set.seed(20260704)

thin <- function(reach, noticed) {
  exactly <- reach - c(reach[-1], 0)
  rev(cumsum(rev(exactly * noticed)))
}

# log of P(highest <= g) given the reaches of all causes present
log_at_most <- function(reaches, g, grades) {
  if (g >= grades) return(0)
  sum(vapply(reaches, function(r) log1p(-r[g + 1]), 0))
}

likelihood <- function(finding, state) {
  present <- Filter(function(cause) state[cause$variable + 1] == cause$level, finding$sign$causes)
  grades <- length(finding$sign$background)
  if (finding$sign$takenAway) {
    shown <- finding$sign$background[1] * prod(vapply(present, function(cause) cause$reach[1], 0)) * finding$noticed[1]
    return(if (identical(finding$grade, 0)) 1 - shown else shown)
  }
  reaches <- lapply(c(list(finding$sign$background), lapply(present, function(cause) cause$reach)),
                    thin, noticed = finding$noticed)
  upper <- if (identical(finding$grade, "seen")) grades else finding$grade
  if (identical(finding$grade, 0)) return(exp(log_at_most(reaches, 0, grades)))
  lower <- if (identical(finding$grade, "seen")) 0 else finding$grade - 1
  a <- log_at_most(reaches, upper, grades)
  b <- log_at_most(reaches, lower, grades)
  exp(a) * -expm1(b - a)
}

posterior <- function(case) {
  grid <- as.matrix(expand.grid(lapply(case$levels, function(n) 0:(n - 1))))
  weights <- apply(grid, 1, function(state) {
    prior <- prod(mapply(function(row, level) row[level + 1], case$prior, state))
    prior * prod(vapply(case$findings, likelihood, 0, state = state))
  })
  weights <- weights / sum(weights)
  marginals <- lapply(seq_along(case$levels), function(v) {
    vapply(0:(case$levels[v] - 1), function(level) sum(weights[grid[, v] == level]), 0)
  })
  list(marginals = marginals, none = weights[1])
}

random_reach <- function(grades, low, high) cumprod(runif(grades, low, high))

random_finding <- function(levels, many_causes) {
  grades <- sample(1:3, 1)
  taken <- grades == 1 && runif(1) < 0.3
  pairs <- do.call(rbind, lapply(seq_along(levels), function(v) cbind(v - 1, 1:(levels[v] - 1))))
  chosen <- pairs[sample(nrow(pairs), min(nrow(pairs), sample(many_causes, 1))), , drop = FALSE]
  causes <- lapply(seq_len(nrow(chosen)), function(i) {
    list(variable = chosen[i, 1], level = chosen[i, 2], reach = random_reach(grades, 0.05, 0.95))
  })
  grade <- sample(list(0, 1, grades, "seen"), 1)[[1]]
  noticed <- if (identical(grade, 0) && runif(1) < 0.2) rep(0, grades) else runif(grades, 0.1, 1)
  list(sign = list(takenAway = taken, background = random_reach(grades, 0.001, if (taken) 0.95 else 0.2), causes = causes),
       grade = grade, noticed = noticed)
}

random_case <- function(name, levels, findings, many_causes) {
  case <- list(name = name, levels = levels,
               prior = lapply(levels, function(n) { row <- runif(n, 0.02, 1); row / sum(row) }),
               findings = lapply(seq_len(findings), function(i) random_finding(levels, many_causes)))
  c(case, posterior(case))
}

cases <- c(
  lapply(1:25, function(i) random_case(sprintf("random network %d", i), sample(2:3, sample(1:4, 1), replace = TRUE),
                                       sample(1:6, 1), 1:4)),
  lapply(1:3, function(i) random_case(sprintf("network of the brood network's shape %d", i), c(3, rep(2, 9)), 14, 3:9)))

number <- function(x) sprintf("%.17g", x)
vector_of <- function(x) paste0("[", paste(number(x), collapse = ", "), "]")
list_of <- function(x) paste0("[", paste(x, collapse = ", "), "]")
cause_json <- function(x) sprintf('{ "variable": %d, "level": %d, "reach": %s }', as.integer(x$variable), as.integer(x$level), vector_of(x$reach))
finding_json <- function(x) {
  sprintf('{ "sign": { "takenAway": %s, "background": %s, "causes": %s }, "grade": %s, "noticed": %s }',
          tolower(as.character(x$sign$takenAway)), vector_of(x$sign$background),
          list_of(vapply(x$sign$causes, cause_json, "")),
          if (identical(x$grade, "seen")) '"seen"' else as.character(x$grade), vector_of(x$noticed))
}
case_json <- function(x) {
  sprintf('{ "name": "%s", "levels": %s, "prior": %s, "findings": %s, "marginals": %s, "none": %s }',
          x$name, list_of(x$levels), list_of(vapply(x$prior, vector_of, "")),
          list_of(vapply(x$findings, finding_json, "")), list_of(vapply(x$marginals, vector_of, "")), number(x$none))
}
cat(sprintf('{ "madeBy": "inference.R, %s, seed 20260704",\n"cases": [\n%s\n] }\n', R.version.string,
            paste(vapply(cases, case_json, ""), collapse = ",\n")))
