package cli

import (
	"fmt"
	"runtime"
	"runtime/debug"
	"strings"
)

// revisionLength of a commit tells it apart in one project.
const revisionLength = 12

// version is the module version and commit that the binary was built from, as
// reports name it.
func version() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "unknown"
	}
	return versionOf(info)
}

func versionOf(info *debug.BuildInfo) string {
	v := info.Main.Version
	if commit := setting(info, "vcs.revision"); len(commit) >= revisionLength && !strings.Contains(v, commit[:revisionLength]) {
		v += " " + commit[:revisionLength]
	}
	return v
}

// build is version with the day of the commit, whether files were changed
// after it, and what the binary was made with and for.
func build() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return "unknown"
	}
	return buildOf(info)
}

func buildOf(info *debug.BuildInfo) string {
	text := versionOf(info)
	if day, _, found := strings.Cut(setting(info, "vcs.time"), "T"); found {
		text += " of " + day
	}
	if setting(info, "vcs.modified") == "true" && !strings.Contains(text, "+dirty") { // Go's own word for it
		text += ", with changes"
	}
	return fmt.Sprintf("%s, built with %s for %s/%s", text, info.GoVersion, runtime.GOOS, runtime.GOARCH)
}

func setting(info *debug.BuildInfo, key string) string {
	for _, s := range info.Settings {
		if s.Key == key {
			return s.Value
		}
	}
	return ""
}
