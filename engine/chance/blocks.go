package chance

import (
	"runtime"
	"sync"
	"sync/atomic"
)

// inBlocks works the blocks from first up to but without end, on as many
// goroutines as there are processors; worker makes what one of them needs. Which does which
// block is open, so a block may use nothing but its number.
func inBlocks(first, end int, worker func() func(block int)) {
	workers := min(runtime.GOMAXPROCS(0), end-first)
	var next atomic.Int64
	next.Store(int64(first))
	run := func() {
		do := worker()
		for block := int(next.Add(1)) - 1; block < end; block = int(next.Add(1)) - 1 {
			do(block)
		}
	}
	if workers <= 1 {
		run()
		return
	}
	var group sync.WaitGroup
	for range workers {
		group.Go(run)
	}
	group.Wait()
}
