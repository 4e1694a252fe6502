# Makes checks/fixtures/sequence/jags.json: marginal days of events under orders, sampled by JAGS
# (command line; no R package is needed). Run in this folder: Rscript make.R
# Made with R 4.2.2 and JAGS 4.3.1: 4 chains of 50,000 after 2,000, seeds 1 to 4.

chains <- 4
draws <- 50000
batches <- 50

# "four windows" is the case of ordering.json; "unequal" has weights, weak and strict orders.
cases <- list(
  "four windows, strict" = list(
    first = c(0, 10, 15, 20),
    weights = list(rep(1, 31), rep(1, 31), rep(1, 31), rep(1, 41)),
    earlier = c(1, 2, 3), later = c(2, 3, 4), strict = c(1, 1, 1), start = c(5, 20, 30, 40)
  ),
  "unequal" = list(
    first = c(3, 0, 5, 4, 8),
    weights = list(c(5, 1, 1, 2), c(1, 2, 3, 4, 3, 2, 1), c(1, 0, 6, 0, 1, 1), 1:8, c(4, 1, 1, 1, 1)),
    earlier = c(1, 2, 3, 3), later = c(3, 3, 4, 5), strict = c(1, 0, 0, 1), start = c(3, 0, 5, 11, 12)
  )
)

run <- function(case) {
  folder <- tempfile()
  dir.create(folder)
  file.copy("model.bug", folder)
  columns <- max(lengths(case$weights))
  w <- t(sapply(case$weights, function(x) c(x, rep(0, columns - length(x)))))
  data <- list(
    events = length(case$first), orders = length(case$earlier), first = case$first, w = w,
    earlier = case$earlier, later = case$later, strict = case$strict, ok = rep(1, length(case$earlier))
  )
  here <- setwd(folder)
  on.exit(setwd(here))
  list2env(data, environment())
  dump(names(data), "data.R")
  # JAGS knows the older spelling of a matrix only.
  writeLines(gsub("dim = c\\(", ".Dim = c(", readLines("data.R")), "data.R")
  k <- case$start - case$first + 1
  inits <- character()
  for (chain in 1:chains) {
    .RNG.name <- "base::Mersenne-Twister"
    .RNG.seed <- chain
    dump(c("k", ".RNG.name", ".RNG.seed"), sprintf("inits%d.R", chain))
    inits <- c(inits, sprintf('parameters in "inits%d.R", chain(%d)', chain, chain))
  }
  writeLines(c(
    'model in "model.bug"', 'data in "data.R"', sprintf("compile, nchains(%d)", chains), inits,
    "initialize", "update 2000", "monitor day", sprintf("update %d", draws), "coda *", "exit"
  ), "run.cmd")
  stopifnot(system("jags run.cmd > log.txt") == 0)
  index <- read.table("CODAindex.txt")
  samples <- lapply(1:chains, function(chain) read.table(sprintf("CODAchain%d.txt", chain))[[2]])
  lapply(seq_len(nrow(index)), function(i) {
    x <- sapply(samples, function(s) s[index[i, 2]:index[i, 3]])
    means <- sapply(split(x, rep(seq_len(chains * batches), each = draws / batches)), mean)
    days <- seq(case$first[i], length.out = length(case$weights[[i]]))
    list(
      first = case$first[i], mean = mean(x), se = sd(means) / sqrt(length(means)),
      p = sapply(days, function(day) mean(x == day))
    )
  })
}

number <- function(x) paste0(format(x, digits = 8, trim = TRUE, scientific = FALSE), collapse = ",")
event <- function(e) sprintf(
  '{"first":%s,"mean":%s,"se":%s,"p":[%s]}', number(e$first), number(e$mean), number(e$se), number(e$p)
)
list_of <- function(x, of) paste0("[", paste(sapply(x, of), collapse = ","), "]")
text <- sapply(names(cases), function(name) {
  case <- cases[[name]]
  sprintf(
    '{"label":"%s","first":[%s],"weights":%s,"earlier":[%s],"later":[%s],"strict":[%s],"events":%s}',
    name, number(case$first), list_of(case$weights, function(w) sprintf("[%s]", number(w))),
    number(case$earlier - 1), number(case$later - 1), number(case$strict), list_of(run(case), event)
  )
})
writeLines(
  sprintf('{"made_by":"checks/makers/sequence/make.R","cases":[\n%s\n]}', paste(text, collapse = ",\n")),
  "../../fixtures/sequence/jags.json"
)
