package assess

import "strconv"

// percent words a share, for example "variation 16 %".
func percent(what string, share float64) string {
	return what + " " + strconv.FormatFloat(share*100, 'f', 0, 64) + " %"
}
