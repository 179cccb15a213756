#!/usr/bin/python3
"""Writes sun-positions-random.csv: 2000 random instants and places by PyEphem (Debian python3-ephem).

Topocentric at sea level, no refraction. Run by hand; the seed is fixed, so it writes the same file again.
"""
import datetime
import math
import random

import ephem

draw = random.Random(2000)
print(f"# Sun positions at 2000 random instants (2000-2100) and places (within 66 degrees of the equator) by PyEphem")
print(f"# {ephem.__version__} (Debian python3-ephem), topocentric at sea level, no refraction: sun_positions_random.py.")
print("utc,lat,lon,elevation_deg_airless,azimuth_deg")
start = datetime.datetime(2000, 1, 1)
for _ in range(2000):
    when = start + datetime.timedelta(seconds=draw.randrange(100 * 365 * 86400 + 25 * 86400))
    lat = round(draw.uniform(-66.0, 66.0), 3)
    lon = round(draw.uniform(-180.0, 180.0), 3)
    place = ephem.Observer()
    place.lat, place.lon = math.radians(lat), math.radians(lon)
    place.elevation, place.pressure = 0.0, 0.0
    place.date = when
    sun = ephem.Sun(place)
    print(f"{when:%Y-%m-%dT%H:%M:%SZ},{lat},{lon},{math.degrees(sun.alt):.5f},{math.degrees(sun.az):.5f}")
