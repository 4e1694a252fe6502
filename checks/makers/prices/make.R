# Makes checks/fixtures/market/prices.json: sales of an invented world and what JAGS draws from them.
# Run in this folder: Rscript make.R (command line JAGS; no R package is needed).
# Made with R 4.2.2 and JAGS 4.3.1: 4 chains of 40,000 after 5,000, seeds 1 to 4.

set.seed(11)
printings <- 6
levels <- rnorm(printings, 3.5, 0.7)
curve <- c(0, 0.1, 0.4, 1.1, -0.1, 0.2, 0.9)
n <- 70
printing <- sample(printings, n, replace = TRUE, prob = c(6, 5, 4, 3, 2, 1))
column <- sample(7, n, replace = TRUE, prob = c(6, 2, 3, 2, 1, 2, 1))
days <- sample(0:170, n, replace = TRUE)
own <- matrix(rnorm(printings * 7, 0, 0.15), printings)
log <- levels[printing] + curve[column] + own[cbind(printing, column)] - 0.0004 * days +
  rnorm(n, 0, ifelse(column == 1, 0.3, 0.2))
log[c(7, 30, 55)] <- log[c(7, 30, 55)] + c(2.5, -2, 1)
price <- round(exp(log), 2)
step <- days %/% 30

data <- list(
  sales = n, log = log(price), printing = printing, column = column, years = -days / 365.25,
  step = step + 1, steps = max(step) + 1, group = ifelse(column == 1, 1, 2), printings = printings,
  wider = c(1, 3, 12), before = c(18.6, 1, 0.4), middle = log(20)
)
folder <- tempfile()
dir.create(folder)
file.copy("model.bug", folder)
here <- setwd(folder)
list2env(data, environment())
dump(names(data), "data.R")
inits <- character()
for (chain in 1:4) {
  .RNG.name <- "base::Mersenne-Twister"
  .RNG.seed <- chain
  dump(c(".RNG.name", ".RNG.seed"), sprintf("inits%d.R", chain))
  inits <- c(inits, sprintf('parameters in "inits%d.R", chain(%d)', chain, chain))
}
writeLines(c(
  'model in "model.bug"', 'data in "data.R"', "compile, nchains(4)", inits, "initialize",
  "update 5000", "monitor raw, thin(5)", "monitor kind, thin(5)", "update 40000", "coda *", "exit"
), "run.cmd")
stopifnot(system("jags run.cmd > log.txt") == 0)
index <- read.table("CODAindex.txt")
chains <- lapply(1:4, function(chain) read.table(sprintf("CODAchain%d.txt", chain))[[2]])
of <- function(name) {
  i <- which(index[[1]] == name)
  sapply(chains, function(x) x[index[i, 2]:index[i, 3]])
}
raw <- lapply(1:printings, function(p) {
  x <- of(sprintf("raw[%d]", p))
  list(mean = mean(x), sd = sd(x), se = sd(colMeans(x)) / 2)
})
odd <- sapply(1:n, function(i) mean(of(sprintf("kind[%d]", i)) > 1))
setwd(here)
rows <- sprintf(
  '{"printing": %d, "column": %d, "daysBack": %d, "price": %.2f, "odd": %.4f}',
  printing, column, days, price, odd
)
lines <- sapply(raw, function(x) sprintf('{"mean": %.5f, "sd": %.5f, "se": %.5f}', x$mean, x$sd, x$se))
writeLines(
  sprintf('{"sales": [\n%s\n], "raw": [\n%s\n]}', paste(rows, collapse = ",\n"), paste(lines, collapse = ",\n")),
  "../../fixtures/market/prices.json"
)
