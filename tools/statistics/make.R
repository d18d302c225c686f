# Makes tests/Exam.Tests/Statistics/r.json: numbers from R that the statistics of the exam room are held against.
# Run from the project's root:  Rscript tools/statistics/make.R
# Uses base R only: distributions, analysis of variance; formulas of the intraclass correlation as printed by
# Shrout and Fleiss 1979 and McGraw and Wong 1996, on mean squares from R's own aov.

number <- function(x) if (is.infinite(x)) "null" else format(x, digits = 17, scientific = TRUE)
row <- function(...) paste0("[", paste(sapply(c(...), number), collapse = ", "), "]")
rows <- function(name, values) paste0("  \"", name, "\": [\n    ", paste(values, collapse = ",\n    "), "\n  ]")

shares <- c(0.001, 0.025, 0.05, 0.25, 0.5, 0.9, 0.975, 0.999)
normal <- sapply(shares, function(p) row(p, qnorm(p)))
student <- unlist(lapply(c(1, 2, 3.5, 16, 120, 1000), function(df) sapply(shares, function(p) row(p, df, qt(p, df)))))
fisher <- unlist(lapply(list(c(1, 1), c(5, 15), c(5, 18), c(15, 5), c(3, 40), c(29, 29), c(4.6, 5), c(200, 3)),
  function(df) sapply(shares, function(p) row(p, df[1], df[2], qf(p, df[1], df[2])))))
chi <- unlist(lapply(c(1, 2, 7, 30, 250), function(df) sapply(shares, function(p) row(p, df, qchisq(p, df)))))

icc <- function(table) {
  n <- nrow(table); k <- ncol(table)
  long <- data.frame(y = as.vector(table), person = factor(rep(1:n, k)), time = factor(rep(1:k, each = n)))
  two <- summary(aov(y ~ person + time, long))[[1]][["Mean Sq"]]
  one <- summary(aov(y ~ person, long))[[1]][["Mean Sq"]]
  b <- two[1]; j <- two[2]; e <- two[3]; w <- one[2]
  step <- function(r) k * r / (1 + (k - 1) * r)
  ratio <- function(f, df) {
    g <- function(x) (x - 1) / (x + k - 1)
    c(g(f), g(f / qf(0.975, n - 1, df)), g(f * qf(0.975, df, n - 1)))
  }
  r1 <- ratio(b / w, n * (k - 1))
  r3 <- ratio(b / e, (n - 1) * (k - 1))
  v2 <- (b - e) / (b + (k - 1) * e + k * (j - e) / n)
  a <- k * v2 / (n * (1 - v2)); bb <- 1 + k * v2 * (n - 1) / (n * (1 - v2))
  df <- (a * j + bb * e)^2 / ((a * j)^2 / (k - 1) + (bb * e)^2 / ((n - 1) * (k - 1)))
  fl <- qf(0.975, n - 1, df); fu <- qf(0.975, df, n - 1)
  r2 <- c(v2, n * (b - fl * e) / (fl * (k * j + (k * n - k - n) * e) + n * b),
    n * (fu * b - e) / (k * j + (k * n - k - n) * e + n * fu * b))
  paste0("{ \"table\": [", paste(apply(table, 1, row), collapse = ", "), "], \"meanSquares\": ", row(b, w, j, e),
    ", \"oneWay\": ", row(r1), ", \"agreement\": ", row(r2), ", \"consistency\": ", row(r3),
    ", \"means\": ", row(step(r1), step(r2), step(r3)), " }")
}
judges <- matrix(c(9, 2, 5, 8, 6, 1, 3, 2, 8, 4, 6, 8, 7, 1, 2, 6, 10, 5, 6, 9, 6, 2, 4, 7), ncol = 4, byrow = TRUE)
set.seed(20260302)
made <- lapply(list(c(10, 2), c(20, 3), c(7, 5)), function(size)
  matrix(round(rnorm(size[1], 100, 20) + rnorm(size[1] * size[2], 0, 6) + rep(rnorm(size[2], 0, 3), each = size[1]), 1),
    nrow = size[1]))
tables <- sapply(c(list(judges), made), icc)

one <- c(494, 395, 516, 434, 476, 557, 413, 442, 650, 433, 417, 656, 267, 478, 178, 423, 427)
two <- c(512, 430, 520, 428, 500, 600, 364, 380, 658, 445, 432, 626, 260, 477, 259, 350, 451)
interval <- t.test(one - two)$conf.int
agreement <- row(mean(one - two), interval[1], interval[2], sd(one - two))

writeLines(c("{", paste(c(rows("normal", normal), rows("student", student), rows("fisher", fisher), rows("chiSquare", chi),
  rows("icc", tables), paste0("  \"agreement\": ", agreement)), collapse = ",\n"), "}"),
  "tests/Exam.Tests/Statistics/r.json")
