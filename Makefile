# Homeside. Two commands do all the set-up on a fresh Debian machine with Go:
#   make run    builds the editor and opens it (LESSON=path opens that lesson)
#   make test   runs everything that is tested, a real window included
# For daily use: make check (no window), make bench (speeds).

GO      ?= go
TAGS    := migrated_fynedo,no_emoji
LESSON  ?=
BUILTIN := assets/lessons/left-hand-middle.json

# Debian packages and what they are for.
BUILD_PACKAGES := gcc libc6-dev pkg-config libgl-dev libxcursor-dev libxrandr-dev libxinerama-dev libxi-dev libxxf86vm-dev
RUN_PACKAGES   := libgl1 libx11-6 libxcursor1 libxrandr2 libxinerama1 libxi6
CHECK_PACKAGES := ffmpeg librsvg2-bin poppler-utils libxml2-utils chromium gcc libc6-dev pkg-config libcairo2-dev alsa-utils
TEST_PACKAGES  := xvfb xdotool openbox x11-utils python3-xlib $(CHECK_PACKAGES)

# The checker's version is pinned, so that a new one does not fail old code.
STATICCHECK := honnef.co/go/tools/cmd/staticcheck@v0.8.2

.PHONY: run test check fmt vet cli editor window-test bench packages-build packages-check packages-test packages-bench clean

run: packages-build
	@scripts/run.sh "$(GO)" "$(TAGS)" "$(LESSON)" "$(BUILTIN)"

test: check packages-build packages-test
	$(MAKE) editor window-test

# check is the part of test that needs no window.
check: packages-check fmt vet
	CGO_ENABLED=0 $(GO) test $$($(GO) list -e ./... | grep -v '^homeside/cmd/homeside$$')

fmt:
	@bad=$$(gofmt -l $$(git ls-files '*.go')); if [ -n "$$bad" ]; then echo "not formatted: $$bad"; exit 1; fi

vet:
	CGO_ENABLED=0 $(GO) vet $$($(GO) list -e ./... | grep -v '^homeside/cmd/homeside$$')
	CGO_ENABLED=0 $(GO) run $(STATICCHECK) $$($(GO) list -e ./... | grep -v '^homeside/cmd/homeside$$')

cli:
	CGO_ENABLED=0 $(GO) build -o bin/homeside-cli ./cmd/homeside-cli

editor:
	CGO_ENABLED=1 $(GO) build -tags $(TAGS) -o bin/homeside ./cmd/homeside

# window-test drives the real window under Xvfb.
window-test:
	CGO_ENABLED=1 $(GO) test -tags $(TAGS),window -count=1 -v ./cmd/homeside

# bench prints speeds; it asserts nothing.
bench: packages-bench packages-build packages-test editor
	@scripts/bench.sh "$(GO)" "$(TAGS)"
	@scripts/clipbench.sh "$(GO)"

packages-build:
	@scripts/packages.sh "to build the editor and to open its window" $(BUILD_PACKAGES) $(RUN_PACKAGES)

packages-check:
	@scripts/packages.sh "to read exported pictures, clips and pages back in the tests" $(CHECK_PACKAGES)

packages-test:
	@scripts/packages.sh "to test a real window and read exported pictures and clips back" $(TEST_PACKAGES)

packages-bench:
	@scripts/packages.sh "to compare a flight with scipy's, and clips with a C program's" python3 python3-scipy ffmpeg gcc libc6-dev pkg-config libcairo2-dev

clean:
	rm -rf bin out
