package engine

import (
	"bytes"
	"crypto/rand"
	"crypto/rsa"
	"crypto/x509"
	"encoding/pem"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/bundle"
)

func bundleOf(t *testing.T, opts Options, sign Signing) []byte {
	t.Helper()
	var out bytes.Buffer
	if err := WriteBundle(&out, opts, sign); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

func readBundle(data []byte, verify *bundle.VerificationConfig) (bundle.Bundle, error) {
	reader := bundle.NewReader(bytes.NewReader(data)).WithSkipBundleVerification(verify == nil)
	if verify != nil {
		reader = reader.WithBundleVerificationConfig(verify)
	}
	return reader.Read()
}

func TestBundleIsTheSameEachTime(t *testing.T) {
	if !bytes.Equal(bundleOf(t, Options{}, Signing{}), bundleOf(t, Options{}, Signing{})) {
		t.Error("two bundles of the same policies differ")
	}
}

func TestBundleGoesByTheSettings(t *testing.T) {
	b, err := readBundle(bundleOf(t, Options{
		Off: []string{"contact-soft-vinyl"}, Severity: map[string]string{"sequence-cover-first": "note"},
	}, Signing{}), nil)
	if err != nil {
		t.Fatal(err)
	}
	rules := b.Data["answer"].(map[string]any)["rules"].(map[string]any)
	if rules["contact-soft-vinyl"] != nil {
		t.Error("a rule that is off is asked")
	}
	grades := rules["sequence-cover-first"].(map[string]any)["grades"].(map[string]any)
	if grades[""] != "note" {
		t.Errorf("grades %v, want a note", grades)
	}
	for _, m := range b.Modules {
		if strings.HasSuffix(m.Path, "_test.rego") {
			t.Errorf("%s is a test", m.Path)
		}
	}
}

func TestBundleSignature(t *testing.T) {
	key, err := rsa.GenerateKey(rand.Reader, 2048)
	if err != nil {
		t.Fatal(err)
	}
	public, err := x509.MarshalPKIXPublicKey(&key.PublicKey)
	if err != nil {
		t.Fatal(err)
	}
	private := pem.EncodeToMemory(&pem.Block{Type: "RSA PRIVATE KEY", Bytes: x509.MarshalPKCS1PrivateKey(key)})
	text := string(pem.EncodeToMemory(&pem.Block{Type: "PUBLIC KEY", Bytes: public}))
	verify := bundle.NewVerificationConfig(map[string]*bundle.KeyConfig{"office": {Key: text, Algorithm: "RS256"}}, "office", "", nil)
	if _, err := readBundle(bundleOf(t, Options{}, Signing{Key: string(private), Algorithm: "RS256"}), verify); err != nil {
		t.Errorf("signed: %v", err)
	}
	if _, err := readBundle(bundleOf(t, Options{}, Signing{}), verify); err == nil {
		t.Error("a bundle without a signature passes where one is asked for")
	}
}
