#!/usr/bin/python3
"""Water on the saturation line by an independent implementation of IAPWS-IF97.

Needs Debian's package python3-iapws (1.5.3-1 when the stored output was made):

    apt-get install python3-iapws
    /usr/bin/python3 water.py > water.csv

The output is stored beside this file, and the tests compare every row of it.
"""
from iapws.iapws97 import IAPWS97, _PSat_T, _TSat_P

print("# [S1] by an independent implementation: /usr/bin/python3 water.py > water.csv, Debian python3-iapws 1.5.3-1.")
print("p_kPa,T_C,p_back_kPa,latent_kJ_per_kg")
for step in range(0, 331):
    kilopascals = 75 + step * 0.1
    kelvin = _TSat_P(kilopascals / 1000)
    liquid, steam = IAPWS97(T=kelvin, x=0), IAPWS97(T=kelvin, x=1)
    print(f"{kilopascals:.1f},{kelvin - 273.15:.6f},{_PSat_T(kelvin) * 1000:.6f},{steam.h - liquid.h:.4f}")
