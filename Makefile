# Everything a newcomer types. `make run` and `make test` need Go and nothing
# else; Go fetches the modules and the pinned tools itself. The browser tests
# need Chromium and, for the accessibility check, npm.

GO ?= go
STATICCHECK := $(GO) run honnef.co/go/tools/cmd/staticcheck@v0.8.2
TEMPL := $(GO) run github.com/a-h/templ/cmd/templ@v0.3.1100
CACHE := .cache
ENGINE := web/worker/engine
AXE := $(CACHE)/axe-core-4.10.3/package/axe.min.js

.PHONY: run demo test check views engine browser shots serving bench fuzz

run: engine ## open the app with the demo site, in a data folder of its own
	@dir=$$(mktemp -d) && echo "A fresh data folder: $$dir" && \
	$(GO) build -o $(CACHE)/boughline ./cmd/boughline && \
	exec $(CACHE)/boughline app --demo --data "$$dir/boughline.db" $(if $(LISTEN),--listen $(LISTEN))

demo: ## write the demo site and print its outcomes
	@$(GO) run ./cmd/boughline demo demo-site >/dev/null
	@$(GO) run ./cmd/boughline assess demo-site/survey.json

test: check engine ## formatting, vet, linter, the engine of the phone's app and every test that needs no browser
	$(GO) test $$($(GO) list ./... | grep -v internal/browsertest)

check:
	@test -z "$$(gofmt -l .)" || { gofmt -l .; echo 'gofmt would change the files above' >&2; exit 1; }
	$(GO) vet ./...
	$(STATICCHECK) ./...
	GOOS=js GOARCH=wasm $(GO) vet ./cmd/boughline-field ./store/indexeddb
	$(TEMPL) generate -path web/view >/dev/null
	@git diff --exit-code --stat -- web/view || { echo 'the views above were not made anew: make views' >&2; exit 1; }

views: ## make the Go code of the views anew
	$(TEMPL) generate -path web/view

engine: ## the app for the phone, compiled for the browser; prints its size
	@mkdir -p $(CACHE)
	GOOS=js GOARCH=wasm GOWASM=satconv,signext $(GO) build -trimpath -ldflags '-s -w' -o $(CACHE)/engine.wasm ./cmd/boughline-field
	@gzip -9 -n -c $(CACHE)/engine.wasm > $(ENGINE)/engine.wasm.gz
	@cp "$$($(GO) env GOROOT)/lib/wasm/wasm_exec.js" $(ENGINE)/
	@sh internal/browsertest/size.sh $(CACHE)/engine.wasm $(ENGINE)/engine.wasm.gz

browser: engine $(AXE) ## the app in a real Chromium, at a desk and offline on a phone
	BOUGHLINE_BROWSER=must BOUGHLINE_AXE=$(CURDIR)/$(AXE) $(GO) test -count 1 ./internal/browsertest

shots: engine ## pictures of every page into the folder shots
	BOUGHLINE_BROWSER=must BOUGHLINE_SHOTS=$(CURDIR)/shots $(GO) test -count 1 -run TestShots ./internal/browsertest

serving: ## prove that make run answers
	BOUGHLINE_SERVING=1 $(GO) test -count 1 -run TestMakeRunAnswers ./internal/browsertest

$(AXE):
	@mkdir -p $(CACHE)/axe-core-4.10.3
	cd $(CACHE)/axe-core-4.10.3 && npm pack --silent axe-core@4.10.3 && tar xzf axe-core-4.10.3.tgz package/axe.min.js

bench: ## timings, in the form that benchstat reads
	$(GO) test -run '^$$' -bench . -benchmem -count 5 ./...

fuzz: ## feed the document reader broken documents for a minute
	$(GO) test -run '^$$' -fuzz FuzzRead -fuzztime 60s -fuzzminimizetime 50x ./survey
