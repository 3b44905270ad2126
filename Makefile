# Everything a newcomer types. `make run` and `make test` need Go and nothing
# else; Go fetches the modules and the pinned tools itself.

GO ?= go
STATICCHECK := $(GO) run honnef.co/go/tools/cmd/staticcheck@v0.8.2

.PHONY: run test check bench fuzz

run: ## write the demo site and print its outcomes
	@$(GO) run ./cmd/boughline demo demo-site >/dev/null
	@$(GO) run ./cmd/boughline assess demo-site/survey.json

test: check ## formatting, vet, linter and every test
	$(GO) test ./...

check:
	@test -z "$$(gofmt -l .)" || { gofmt -l .; echo 'gofmt would change the files above' >&2; exit 1; }
	$(GO) vet ./...
	$(STATICCHECK) ./...

bench: ## timings, in the form that benchstat reads
	$(GO) test -run '^$$' -bench . -benchmem -count 5 ./...

fuzz: ## feed the document reader broken documents for a minute
	$(GO) test -run '^$$' -fuzz FuzzRead -fuzztime 60s -fuzzminimizetime 50x ./survey

TEMPL := $(GO) run github.com/a-h/templ/cmd/templ@v0.3.1100

.PHONY: views
views: ## make the Go code of the views anew
	$(TEMPL) generate -path web/view
