# Writes the colour profile app/src/main/resources/org/fandown/app/paper/colour/srgb.icc (its SOURCE.md says of what).
import struct,sys
def s15(x): return struct.pack('>i', round(x*65536))
def xyz(*v): return b'XYZ \0\0\0\0'+b''.join(map(s15,v))
def mluc(t):
    d=t.encode('utf-16-be'); return b'mluc\0\0\0\0'+struct.pack('>II',1,12)+b'enUS'+struct.pack('>II',len(d),28)+d
# IEC 61966-2-1: gamma 2.4, a=1/1.055, b=0.055/1.055, c=1/12.92, d=0.04045
para=b'para\0\0\0\0'+struct.pack('>HH',3,0)+b''.join(map(s15,[2.4,1/1.055,0.055/1.055,1/12.92,0.04045]))
chad=b'sf32\0\0\0\0'+b''.join(map(s15,[1.04788,0.02292,-0.05022,0.02959,0.99048,-0.01707,-0.00925,0.01508,0.75168]))
tags=[(b'desc',mluc('sRGB')),(b'cprt',mluc('Fandown, Apache-2.0')),(b'wtpt',xyz(0.96420,1.0,0.82491)),(b'chad',chad),
(b'rXYZ',xyz(0.43607,0.22249,0.01392)),(b'gXYZ',xyz(0.38515,0.71687,0.09708)),(b'bXYZ',xyz(0.14307,0.06061,0.71410)),
(b'rTRC',para),(b'gTRC',para),(b'bTRC',para)]
off=128+4+12*len(tags); body=b''; table=b''; seen={}
for n,d in tags:
    if d not in seen:
        seen[d]=(off+len(body),len(d)); body+=d+b'\0'*(-len(d)%4)
    o,l=seen[d]; table+=n+struct.pack('>II',o,l)
size=off+len(body)
head=struct.pack('>I',size)+b'\0\0\0\0'+bytes([4,0x20,0,0])+b'mntrRGB XYZ '+struct.pack('>6H',2026,1,1,0,0,0)+b'acsp'+b'\0'*4+b'\0'*4+b'\0'*4+b'\0'*4+b'\0'*8+struct.pack('>I',1)+s15(0.9642)+s15(1.0)+s15(0.82491)
head=head+b'\0'*(128-len(head))
open(sys.argv[1],'wb').write(head+struct.pack('>I',len(tags))+table+body)
print(size)
