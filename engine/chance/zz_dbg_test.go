package chance
import ("testing";"fmt";"math/rand/v2";"math")
func TestDbg(t *testing.T){
 r := rand.New(rand.NewPCG(7, 0))
 n:=0
 for range 300 {
 c:=randomCase(r)
 g,err:=c.Chance(); if err!=nil {continue}
 _,_,want:=reference(c)
 if math.Abs(g.GivenLoadTest.Probability/want-1)<1e-4 {continue}
 m,_:=c.model()
 x:=m.tested()
 p0,b0:=x.passes(),x.breaks()
 fmt.Printf("err %.2e %d rides; %+v\n",b0/p0/want-1, len(x.rides),m)
 save:=fast
 fast=accuracy{0.5,1e-12}
 fmt.Println("finer self", x.passes()/p0-1, x.breaks()/b0-1)
 fast=save
 x.piece/=3
 fmt.Println("finer piece", x.passes()/p0-1, x.breaks()/b0-1)
 x=m.tested()
 for _,z:=range []float64{-2,-1,0,1,2,3}{
  s:=x.self.At(z); l:=math.Log(s+x.test); lo,hi:=x.deviate(s),x.deviate(s+x.light)
  a:=x.below(hi,lo,l,0); pc:=x.piece; x.piece/=5; b:=x.below(hi,lo,l,0); x.piece=pc
  fmt.Println(z,lo,hi,"below",a,b/a-1)
 }
 n++; if n>1 {return}
 }
}
