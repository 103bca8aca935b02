# The calculations once more, in base R 4.2, to time R against Combside in one run and to compare the values.
# bench/statistics.ts starts this file: Rscript statistics.R CASES REPEATS, where CASES is an R file it wrote that makes the
# list `cases` (each with id, call, inputs). Prints one line per case: id, milliseconds per call, value (the first number).
# Written from the formulas, apart from the TypeScript. Not here: twoTestsTwoPopulationsBayes (a Markov chain in R).

eps <- 1e-12
meets <- function(p, target) p >= target - eps
gceil <- function(x) if (abs(x - round(x)) <= eps * max(1, abs(x))) round(x) else ceiling(x)
units <- function(N, P) max(1, gceil(N * P))
large <- function(p, C) {                       # smallest n with 1-(1-p)^n >= C
  if (p >= 1) return(1)
  n <- max(1, ceiling(log(1 - C + eps) / log1p(-p)))
  while (n > 1 && meets(-expm1((n - 1) * log1p(-p)), C)) n <- n - 1
  n
}
none <- function(N, d, n, Se) { y <- max(0, n + d - N):min(n, d); sum(dhyper(y, d, N - d, n) * (1 - Se)^y) }
few <- function(x, N, d, n, Se, Sp) {           # P(x or fewer positives)
  y <- max(0, n + d - N):min(n, d)
  inner <- sapply(y, function(k) sum(dbinom(0:x, k, Se) * pbinom(x - 0:x, n - k, 1 - Sp)))
  sum(dhyper(y, d, N - d, n) * inner)
}
md <- function(N, d, C, Se) { n <- max(1, gceil((N / Se) * (1 - (1 - C)^(1 / d)))); if (n > N) NA else n }
z2 <- function(C) -qnorm((1 - C) / 2)
cut01 <- function(p) pmin(1, pmax(0, p))
cp <- function(x, n, C) { a <- (1 - C) / 2; c(if (x == 0) 0 else qbeta(a, x, n - x + 1), if (x == n) 1 else qbeta(1 - a, x + 1, n - x)) }
wil <- function(x, n, C) { z <- z2(C); p <- x / n; h <- z * sqrt(p * (1 - p) / n + z^2 / (4 * n^2)); c((p + z^2 / (2 * n) - h), (p + z^2 / (2 * n) + h)) / (1 + z^2 / n) }
blk <- function(x, n, C) {
  acc <- function(p) {
    p1 <- 1 - pbinom(x - 1, n, p); p2 <- pbinom(x, n, p)
    a1 <- p1 + pbinom(qbinom(p1, n, p) - 1, n, p); a2 <- p2 + 1 - pbinom(qbinom(1 - p2, n, p), n, p)
    min(a1, a2)
  }
  ends <- cp(x, n, C); lo <- ends[1]; hi <- ends[2]; step <- 1e-5
  if (x > 0) while (acc(lo + step) < 1 - C) lo <- lo + step
  if (x < n) while (acc(hi - step) < 1 - C) hi <- hi - step
  c(lo, hi)
}
adj <- function(i, shares) { ar <- i$relativeRisks / sum(i$relativeRisks * shares); i$designPrevalence * ar }
poolneg <- function(k, P, Se, Sp) (1 - (1 - P)^k) * (1 - Se) + (1 - P)^k * Sp
tail_beta <- function(i, a, b) if (i$direction == "above") 1 - pbeta(i$percentile, a, b) else pbeta(i$percentile, a, b)
solve_beta <- function(i, shapes, least) {
  f <- function(s) tail_beta(i, shapes(s)[1], shapes(s)[2]) - i$probability
  shapes(uniroot(f, c(least, 1e5), tol = 1e-12)$root)
}
imperfect <- function(i, sens) {
  for (n in 1:100000) {
    c <- qbinom(i$targetSpecificity - eps, n, 1 - i$specificity) + 1
    if (c <= n && meets(sens(n, c), i$targetSensitivity)) return(n)
    if (!is.null(i$populationSize) && n >= i$populationSize) return(NA)
  }
}

f <- list(
  sampleSizeToDetectLargePopulation = function(i) large(i$designPrevalence * i$sensitivity, i$confidence),
  sampleSizeToDetectFinitePopulation = function(i) {
    for (n in 1:i$populationSize) if (meets(1 - none(i$populationSize, i$infectedUnits, n, i$sensitivity), i$confidence)) return(n)
    NA
  },
  sampleSizeApproximationPerfectTest = function(i) (1 - (1 - i$confidence)^(1 / i$infectedUnits)) * (i$populationSize - (i$infectedUnits - 1) / 2),
  sampleSizeApproximationImperfectSensitivity = function(i) md(i$populationSize, units(i$populationSize, i$designPrevalence), i$confidence, i$sensitivity),
  sampleSizeImperfectTestFinitePopulation = function(i) imperfect(i, function(n, c) 1 - few(c - 1, i$populationSize, i$infectedUnits, n, i$sensitivity, i$specificity)),
  sampleSizeImperfectTestLargePopulation = function(i) {
    ap <- i$designPrevalence * i$sensitivity + (1 - i$designPrevalence) * (1 - i$specificity)
    imperfect(i, function(n, c) pbinom(c - 1, n, ap, lower.tail = FALSE))
  },
  sampleSizeToEstimate = function(i) {
    ap <- i$expectedPrevalence * i$sensitivity + (1 - i$expectedPrevalence) * (1 - i$specificity)
    n <- (z2(i$confidence) / i$margin)^2 * ap * (1 - ap) / (i$sensitivity + i$specificity - 1)^2
    if (!is.null(i$populationSize)) n <- n * i$populationSize / (n + i$populationSize - 1)
    gceil(n)
  },
  detectionProbabilityLargePopulation = function(i) -expm1(i$tested * log1p(-i$designPrevalence * i$sensitivity)),
  detectionProbabilityFinitePopulation = function(i) 1 - none(i$populationSize, i$infectedUnits, i$tested, i$sensitivity),
  detectionProbabilityFiniteApproximation = function(i) 1 - (1 - i$sensitivity * i$tested / i$populationSize)^i$infectedUnits,
  detectionVaryingSensitivity = function(i) if (is.null(i$populationSize)) 1 - prod(1 - i$designPrevalence * i$unitSensitivities) else
    1 - (1 - sum(i$unitSensitivities) / i$populationSize)^units(i$populationSize, i$designPrevalence),
  cutPointRuleFinitePopulation = function(i) 1 - few(i$cutPoint - 1, i$populationSize, i$infectedUnits, i$tested, i$sensitivity, i$specificity),
  cutPointRuleLargePopulation = function(i) pbinom(i$cutPoint - 1, i$tested, i$designPrevalence * i$sensitivity + (1 - i$designPrevalence) * (1 - i$specificity), lower.tail = FALSE),
  probabilityOfSoFewPositivesIfInfected = function(i) few(i$positives, i$populationSize, i$infectedUnits, i$tested, i$sensitivity, i$specificity),
  upperPrevalenceAfterAllNegative = function(i) min(1, (1 - (1 - i$confidence)^(1 / i$tested)) / i$sensitivity),
  twoStageSampleSizes = function(i) if (is.null(i$clustersInPopulation)) large(i$designPrevalenceClusters * i$targetClusterSensitivity, i$targetSystemSensitivity) else
    md(i$clustersInPopulation, units(i$clustersInPopulation, i$designPrevalenceClusters), i$targetSystemSensitivity, i$targetClusterSensitivity),
  twoStageSystemSensitivity = function(i) {
    se <- if (is.null(i$unitsInSampledClusters)) 1 - (1 - i$designPrevalenceUnits * i$unitSensitivity)^i$unitsTested else
      mapply(function(N, n) 1 - (1 - i$unitSensitivity * n / N)^units(N, i$designPrevalenceUnits), i$unitsInSampledClusters, i$unitsTested)
    H <- i$clustersInPopulation
    if (is.null(H)) 1 - prod(1 - i$designPrevalenceClusters * se) else 1 - (1 - sum(se) / H)^units(H, i$designPrevalenceClusters)
  },
  twoStageSystemSensitivityExact = function(i) {
    q <- mapply(function(N, n) none(N, units(N, i$designPrevalenceUnits), n, i$unitSensitivity), i$unitsInSampledClusters, i$unitsTested)
    H <- i$clustersInPopulation; D <- units(H, i$designPrevalenceClusters); h <- length(q)
    miss <- 0
    for (y in 0:min(h, D)) {
      sets <- if (y == 0) matrix(0, 0, 1) else combn(h, y)
      miss <- miss + dhyper(y, D, H - D, h) * mean(apply(sets, 2, function(s) prod(q[s])))
    }
    1 - miss
  },
  apiariesForColoniesPerApiary = function(i) {
    se <- 1 - (1 - i$designPrevalenceUnits * i$unitSensitivity)^i$unitsPerClusterOptions
    sapply(se, function(s) large(i$designPrevalenceClusters * s, i$targetSystemSensitivity)); se[1]
  },
  riskBasedSensitivity = function(i) {
    sizes <- i$stratumSizes; shares <- if (is.null(sizes)) i$populationShares else sizes / sum(sizes)
    epi <- adj(i, shares)
    s <- if (is.null(sizes)) 1 - prod((1 - i$sensitivity * epi)^i$tested) else 1 - prod((1 - i$sensitivity * i$tested / sizes)^(epi * sizes))
    (i$relativeRisks / sum(i$relativeRisks * shares))[1] + 0 * s
  },
  riskBasedSampleSize = function(i) large(i$sensitivity * sum(adj(i, i$populationShares) * i$sampleShares), i$confidence),
  riskBasedSensitivityTwoFactors = function(i) {
    a1 <- i$relativeRisks1 / sum(i$relativeRisks1 * i$shares1)
    1 - prod(sapply(seq_along(a1), function(k) {
      a2 <- i$relativeRisks2[[k]] / sum(i$relativeRisks2[[k]] * i$shares2[[k]])
      prod((1 - i$sensitivity * i$designPrevalence * a1[k] * a2)^i$tested[[k]])
    }))
  },
  probabilityOfFreedomOverTime = function(i) {
    free <- i$priorFreedom; first <- NA
    for (t in seq_along(i$systemSensitivities)) {
      prior <- free * (1 - i$introductionProbabilities[t]); if (t == 1) first <- prior
      free <- prior / (1 - i$systemSensitivities[t] * (1 - prior))
    }
    first
  },
  plateauOfFreedom = function(i) max(0, 1 - i$introductionProbability / i$systemSensitivity),
  sensitivityNeededForFreedom = function(i) (1 - i$prior / i$targetFreedom) / (1 - i$prior),
  negativeRoundsNeeded = function(i) {
    free <- i$priorFreedom
    for (t in 1:10000) {
      prior <- free * (1 - i$introductionProbability); free <- prior / (1 - i$systemSensitivity * (1 - prior))
      if (meets(free, i$targetFreedom)) return(t)
    }
    NA
  },
  sampleSizeForFreedom = function(i) { prior <- i$priorFreedom * (1 - i$introductionProbability)
    large(i$designPrevalence * i$sensitivity, (1 - prior / i$targetFreedom) / (1 - prior)); prior },
  combineComponents = function(i) 1 - prod(1 - i$componentSensitivities),
  reportingSensitivity = function(i) { s <- prod(i$stepProbabilities) * (1 - (1 - i$infectedIfSubmitted * i$sensitivity)^i$unitsTested)
    1 - (1 - s)^(i$designPrevalenceClusters * i$clusters); s },
  interval.wilson = function(i) wil(i$positives, i$tested, i$confidence)[2],
  interval.clopperPearson = function(i) cp(i$positives, i$tested, i$confidence)[2],
  interval.jeffreys = function(i) if (i$positives == i$tested) 1 else qbeta((1 + i$confidence) / 2, i$positives + 0.5, i$tested - i$positives + 0.5),
  interval.blaker = function(i) blk(i$positives, i$tested, i$confidence)[2],
  interval.agrestiCoull = function(i) { z <- z2(i$confidence); w <- i$tested + z^2; p <- (i$positives + z^2 / 2) / w; cut01(p + z * sqrt(p * (1 - p) / w)) },
  truePrevalence.blaker = function(i) cut01((blk(i$positives, i$tested, i$confidence)[2] + i$specificity - 1) / (i$sensitivity + i$specificity - 1)),
  truePrevalence.clopperPearson = function(i) cut01((cp(i$positives, i$tested, i$confidence)[2] + i$specificity - 1) / (i$sensitivity + i$specificity - 1)),
  truePrevalence.wilson = function(i) cut01((wil(i$positives, i$tested, i$confidence)[2] + i$specificity - 1) / (i$sensitivity + i$specificity - 1)),
  truePrevalence.estimatedTest = function(i) {
    z <- z2(i$confidence); w <- i$tested + z^2; ap <- (i$positives + z^2 / 2) / w
    a <- i$sensitivitySample; b <- i$specificitySample
    se <- (a * i$sensitivity + 1) / (a + 2); sp <- (b * i$specificity + 1) / (b + 2); g <- se + sp - 1; p <- (ap + sp - 1) / g
    v <- se * (1 - se) / (a + 2); u <- sp * (1 - sp) / (b + 2)
    cut01(p + 2 * z^2 * (p * v - (1 - p) * u) + z * sqrt(ap * (1 - ap) / w + p^2 * v + (1 - p)^2 * u) / g)
  },
  roganGladenNormal = function(i) (i$positives / i$tested + i$specificity - 1) / (i$sensitivity + i$specificity - 1),
  posteriorPrevalence = function(i) {
    nodes <- function(v) if (is.list(v)) qbeta((1:48 - 0.5) / 48, v$alpha, v$beta) else v
    se <- nodes(i$sensitivity); sp <- nodes(i$specificity); p <- (1:2000 - 0.5) / 2000
    post <- dbeta(p, i$prior[1], i$prior[2]) * rowMeans(sapply(se, function(s) rowMeans(sapply(sp, function(t) dbinom(i$positives, i$tested, p * s + (1 - p) * (1 - t))))))
    sum(p * post) / sum(post)
  },
  pooledPrevalencePerfectTest = function(i) 1 - (1 - i$positivePools / i$pools)^(1 / i$poolSize),
  pooledPrevalenceImperfectTest = function(i) { s <- i$positivePools / i$pools
    if (s <= 1 - i$specificity) 0 else 1 - ((i$sensitivity - s) / (i$sensitivity + i$specificity - 1))^(1 / i$poolSize) },
  pooledPrevalenceVariableSize = function(i) uniroot(function(p) sum(i$poolSizes * i$positivePools / (1 - (1 - p)^i$poolSizes)) - sum(i$poolSizes * i$pools), c(1e-9, 1 - 1e-9), tol = 1e-14)$root,
  pooledSurveySensitivity = function(i) 1 - poolneg(i$poolSize, i$designPrevalence, i$poolSensitivity, i$poolSpecificity)^i$pools,
  poolsNeeded = function(i) large(1 - poolneg(i$poolSize, i$designPrevalence, i$poolSensitivity, i$poolSpecificity), i$confidence),
  pooledHerdTest = function(i) 1 - poolneg(i$poolSize, i$prevalence, i$sensitivity, i$specificity^i$poolSize)^i$pools,
  combineTwoTests = function(i) { s <- i$sensitivities; if (i$reading == "series") prod(s) + i$covarianceInfected else 1 - prod(1 - s) - i$covarianceInfected },
  predictiveValues = function(i) i$prevalence * i$sensitivity / (i$prevalence * i$sensitivity + (1 - i$prevalence) * (1 - i$specificity)),
  postTestProbability = function(i) { o <- i$priorProbability / (1 - i$priorProbability) * prod(i$likelihoodRatios); o / (1 + o) },
  multipleHypotheses = function(i) {
    l <- sapply(i$signProbabilities, function(p) prod(mapply(function(q, s) if (is.null(s)) 1 else if (s) q else 1 - q, p, i$findings)))
    (i$priors * l / sum(i$priors * l))[1]
  },
  kappa = function(i) { t <- do.call(rbind, i$table); t <- t / sum(t); sum(diag(t)) },
  twoTestsTwoPopulations = function(i) {
    u <- c(0.1, 0.6, 0.9, 0.9, 0.9, 0.9)
    n2 <- function(q) { p <- plogis(q); ll <- 0
      for (k in 1:2) { a <- p[k]; cell <- a * c(p[3] * p[4], p[3] * (1 - p[4]), (1 - p[3]) * p[4], (1 - p[3]) * (1 - p[4])) + (1 - a) * c((1 - p[5]) * (1 - p[6]), (1 - p[5]) * p[6], p[5] * (1 - p[6]), p[5] * p[6])
        ll <- ll - sum(i$tables[[k]] * log(cell)) }
      ll }
    plogis(optim(qlogis(u), n2, method = "BFGS", control = list(maxit = 1000, reltol = 1e-15))$par)[1]
  },
  undetectedCases = function(i) (i$firstSource + 1) * (i$secondSource + 1) / (i$both + 1) - 1,
  betaFromMode = function(i) { if (i$mode == 1) return(log(1 - i$probability) / log(i$percentile)); if (i$mode == 0) return(1)
    solve_beta(i, function(s) c(1 + s * i$mode, 1 + s * (1 - i$mode)), 0)[1] },
  betaFromMean = function(i) solve_beta(i, function(s) c(s * i$mean, s * (1 - i$mean)), max(1 / i$mean, 1 / (1 - i$mean)))[1],
  betaFromRange = function(i) 6 * ((i$minimum + 4 * i$mode + i$maximum) / 6 - i$minimum) / (i$maximum - i$minimum)
)

args <- commandArgs(trailingOnly = TRUE)
source(args[1]); patience <- as.numeric(args[2])
for (one in cases) {
  run <- f[[one$call]]
  if (is.null(run)) { cat(one$id, "NA", "NA\n"); next }
  value <- as.numeric(run(one$inputs))                 # the first call is not timed
  start <- proc.time()[["elapsed"]]; calls <- 0
  repeat { for (k in 1:5) run(one$inputs); calls <- calls + 5; if (proc.time()[["elapsed"]] - start >= patience) break }
  cat(one$id, formatC(1000 * (proc.time()[["elapsed"]] - start) / calls, digits = 6, format = "g"), formatC(value, digits = 15, format = "g"), "\n")
}
