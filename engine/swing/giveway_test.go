package swing

import (
	"fmt"
	"math"
	"testing"
	"time"
	"boughline/engine/numeric"

	"boughline/quantity"
)

func TestZZ(t *testing.T) {
 for _,f:=range []float64{0.8,1.2,2,4,8,16,30} { for _,a:=range []float64{45,80} { for _, M:=range []quantity.Mass{40,400} {
  k:=float64(SupportOf(M,quantity.Frequency(f),0).Stiffness)
  l:=LimbAtHang{[3][3]float64{{k*1.5,0,0},{0,k*1.2,0},{0,0,k}},M,0.03}
  for _,tol:=range []float64{1e-6,1e-7,1e-8,1e-12} {
  t0:=time.Now()
  g,err:=l.giveWay(80,5,quantity.Angle(a)*quantity.Degree,0.3,numeric.Tolerance{tol,tol/10})
  d:=time.Since(t0)
  if err!=nil{t.Fatal(err)}
  fmt.Printf("f %g a %g M %g tol %g: %.9f %.6f %v %v\n",f,a,float64(M),tol,float64(g.Factor),float64(g.Sag),g.Slack,d)
 }}}}
 _=math.Pi
}
