# Reference values for the distributions, from R. Run from this folder: Rscript generate.R
# Writes distributions.json beside it. Seeded, so it writes the same file each time with R 4.2.2.
#
# How the domain is covered
#   binomial        n from 1 to 1e6, chances from 1e-6 to 1 - 1e-6, counts at 0, n, the mean, and 1 to 8 sd either side
#   hypergeometric  N from 1 to 1e6; d and n from 1 to N, also d > n, n > d, n + d > N, d = N, n = N; both ends, mean, sds
#   beta            shapes from 0.5 to 1e6, the ones intervals use (x, n - x + 1); lower tails 1e-12 to 1 - 1e-9
#   normal          lower tails 1e-12 to 1 - 1e-12
#   gamma           shapes 1 to 1e4 (exact Poisson intervals), tails 1e-9 to 1 - 1e-9
# Values are printed with 17 significant digits, so they read back as the same doubles.
set.seed(20260301)
num <- function(x) formatC(x, digits = 17, format = "g")
row <- function(...) paste0("[", paste(num(c(...)), collapse = ","), "]")
block <- function(name, columns, rows) {
  paste0("  \"", name, "\": {\n    \"columns\": [", paste0("\"", columns, "\"", collapse = ","), "],\n    \"rows\": [\n      ",
         paste(rows, collapse = ",\n      "), "\n    ]\n  }")
}

binomial <- character(0)
for (n in c(1, 2, 5, 20, 59, 300, 1000, 32768, 1e6)) for (p in c(1e-6, 0.001, 0.02, 0.3, 0.5, 0.95, 1 - 1e-6)) {
  m <- n * p; s <- sqrt(n * p * (1 - p))
  for (x in unique(pmin(n, pmax(0, round(c(0, n, m, m - 1, m + s * c(-8, -3, -1, 1, 3, 8)))))))
    binomial <- c(binomial, row(x, n, p, dbinom(x, n, p), pbinom(x, n, p), pbinom(x - 1, n, p, lower.tail = FALSE)))
}

hyper <- character(0)
for (N in c(1, 2, 7, 20, 100, 1000, 50000, 1e6)) {
  pairs <- unique(rbind(
    c(1, 1), c(N, 1), c(1, N), c(N, N), c(max(1, N %/% 2), max(1, N %/% 2)),
    cbind(pmax(1, ceiling(N * c(0.01, 0.1, 0.3, 0.9))), pmax(1, ceiling(N * c(0.2, 0.05, 0.3, 0.8)))),
    cbind(sample.int(N, 4, replace = TRUE), sample.int(N, 4, replace = TRUE))))
  for (i in seq_len(nrow(pairs))) {
    d <- pairs[i, 1]; n <- pairs[i, 2]
    lo <- max(0, n + d - N); hi <- min(n, d); m <- n * d / N
    s <- sqrt(max(0, n * (d / N) * (1 - d / N) * (N - n) / max(1, N - 1)))
    for (y in unique(pmin(hi, pmax(lo, round(c(lo, hi, m, m + s * c(-6, -2, 2, 6)))))))
      hyper <- c(hyper, row(y, N, d, n, dhyper(y, d, N - d, n)))
  }
}

# Chance that none of the infected in a sample is detected: the mean of miss^y. Summed in R over all y.
none <- character(0)
for (N in c(1, 8, 40, 200, 1000, 20000)) for (share in c(0.01, 0.1, 0.5)) for (part in c(0.1, 0.5, 1)) for (miss in c(0, 0.05, 0.2, 0.6)) {
  d <- max(1, ceiling(N * share)); n <- max(1, floor(N * part)); y <- 0:min(n, d)
  none <- c(none, row(N, d, n, miss, sum(sort(dhyper(y, d, N - d, n) * miss^y))))
}

beta <- character(0)
for (s in list(c(1, 20), c(0.5, 20.5), c(82, 182), c(2, 29), c(1, 1e6), c(3, 999998), c(5e5, 5e5), c(1e3, 9e3), c(21, 3), c(1e6, 1)))
  for (q in c(1e-12, 5e-5, 0.005, 0.025, 0.5, 0.975, 0.99995, 1 - 1e-9))
    beta <- c(beta, row(q, s[1], s[2], qbeta(q, s[1], s[2]), pbeta(qbeta(q, s[1], s[2]), s[1], s[2])))

normal <- sapply(c(1e-12, 1e-10, 5e-5, 0.005, 0.025, 0.1, 0.3, 0.5, 0.8, 0.975, 0.99995, 1 - 1e-12), function(q) row(q, qnorm(q)))

gamma <- character(0)
for (a in c(1, 2, 5, 36, 37, 440, 1e4)) for (q in c(1e-9, 5e-5, 0.025, 0.5, 0.975, 1 - 1e-9)) gamma <- c(gamma, row(q, a, qgamma(q, a)))

writeLines(paste0(
  "{\n  \"made\": \"", R.version.string, ", generate.R, seed 20260301\",\n",
  paste(c(
    block("binomial", c("x", "n", "p", "mass", "xOrFewer", "xOrMore"), binomial),
    block("hypergeometric", c("y", "N", "d", "n", "mass"), hyper),
    block("noneDetected", c("N", "d", "n", "miss", "probability"), none),
    block("beta", c("lowerTail", "alpha", "beta", "quantile", "tailAtQuantile"), beta),
    block("normal", c("lowerTail", "quantile"), normal),
    block("gamma", c("lowerTail", "shape", "quantile"), gamma)
  ), collapse = ",\n"), "\n}"), "distributions.json")
