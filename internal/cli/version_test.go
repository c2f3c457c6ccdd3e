package cli

import (
	"runtime"
	"runtime/debug"
	"testing"
)

func TestVersion(t *testing.T) {
	info := func(version string, pairs ...string) *debug.BuildInfo {
		b := &debug.BuildInfo{GoVersion: "go1.99"}
		b.Main.Version = version
		for i := 0; i < len(pairs); i += 2 {
			b.Settings = append(b.Settings, debug.BuildSetting{Key: pairs[i], Value: pairs[i+1]})
		}
		return b
	}
	commit := "0123456789abcdef0123456789abcdef01234567"
	made := ", built with go1.99 for " + runtime.GOOS + "/" + runtime.GOARCH
	for name, tc := range map[string]struct {
		info          *debug.BuildInfo
		version, long string
	}{
		"a release":         {info("v1.2.3"), "v1.2.3", "v1.2.3" + made},
		"a commit":          {info("(devel)", "vcs.revision", commit), "(devel) 0123456789ab", "(devel) 0123456789ab" + made},
		"changed since":     {info("(devel)", "vcs.revision", commit, "vcs.time", "2026-01-31T10:00:00Z", "vcs.modified", "true"), "(devel) 0123456789ab", "(devel) 0123456789ab of 2026-01-31, with changes" + made},
		"changed, and said": {info("v1.2.4+dirty", "vcs.modified", "true"), "v1.2.4+dirty", "v1.2.4+dirty" + made},
		"named already":     {info("v0.0.0-20260131100000-0123456789ab", "vcs.revision", commit), "v0.0.0-20260131100000-0123456789ab", "v0.0.0-20260131100000-0123456789ab" + made},
	} {
		if got := versionOf(tc.info); got != tc.version {
			t.Errorf("%s: got %q, want %q", name, got, tc.version)
		}
		if got := buildOf(tc.info); got != tc.long {
			t.Errorf("%s: got %q, want %q", name, got, tc.long)
		}
	}
}
