package jarwright.day;

import jarwright.water.CirclePacking;
import jarwright.water.GuideLoads;
import jarwright.water.JarBook;

/** The figures that a day is reckoned from. */
public record DayBook(JarBook jars, CirclePacking packing, GuideLoads loads, TaskTimes times) {}
