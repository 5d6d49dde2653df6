#!/usr/bin/python3
"""Latent heat of water by an independent implementation of IAPWS-IF97.

Needs Debian's package python3-iapws, as water.py does:

    /usr/bin/python3 latent.py > latent.csv
"""
from iapws import IAPWS97

print("# [S1] by an independent implementation: /usr/bin/python3 latent.py > latent.csv, Debian python3-iapws 1.5.3-1.")
print("T_C,latent_kJ_per_kg")
for step in range(0, 181):
    celsius = 90 + step * 0.1
    liquid, steam = IAPWS97(T=celsius + 273.15, x=0), IAPWS97(T=celsius + 273.15, x=1)
    print(f"{celsius:.1f},{steam.h - liquid.h:.4f}")
