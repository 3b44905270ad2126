package survey_test

import (
	"bytes"
	"reflect"
	"testing"

	"boughline/survey"
	"boughline/survey/surveytest"

	"pgregory.net/rapid"
)

func write(t interface{ Fatal(...any) }, s *survey.Survey) []byte {
	var b bytes.Buffer
	if err := survey.Write(&b, s); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestWhatIsWrittenReadsBackTheSame(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := surveytest.Site().Draw(t, "site")
		data := write(t, want)
		got, problems, err := survey.Read(bytes.NewReader(data))
		if err != nil || len(problems) > 0 {
			t.Fatalf("%v, %v in %s", err, problems, data)
		}
		if !reflect.DeepEqual(got, want) {
			t.Fatalf("changed in %s", data)
		}
		if again := write(t, got); !bytes.Equal(again, data) {
			t.Fatalf("written differently: %s and %s", data, again)
		}
	})
}

func TestValidateAcceptsWhatReadDoes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		if problems := survey.Validate(surveytest.Site().Draw(t, "site")); len(problems) > 0 {
			t.Fatal(problems)
		}
	})
}
