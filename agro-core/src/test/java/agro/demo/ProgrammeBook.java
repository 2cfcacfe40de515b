package agro.demo;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;

/**
 * Fields, crops, label records, thresholds and sprayers of the vale. Every product, active
 * ingredient and limit is invented; only the numbers of the groups exist.
 */
final class ProgrammeBook {

  private static final String FIELDS =
      """
      field,district,zone,area,latitude,longitude,distance_water,distance_people
      Upper Croft,upper vale,Europe/Ljubljana,0.6 ha,46.4,14.5,40 m,60 m
      Mill Field,lower vale,Europe/Ljubljana,1.8 ha,46.4,14.5,6 m,80 m
      Sand Lane,lower vale,Europe/Ljubljana,1.2 ha,46.4,14.5,120 m,25 m
      """;

  private static final String PLANTINGS =
      """
      field,crop,planted,cleared,first_picking,last_picking,picking_every_days,picked_by
      Upper Croft,leek,2026-04-20,,2026-09-01,2026-10-15,14,
      Mill Field,cabbage,2026-04-28,,2026-06-22,2026-07-20,7,11:00
      Sand Lane,cabbage,2026-05-12,,2026-07-20,2026-08-17,7,
      """;

  private static final String LABELS =
      """
      product,crop,pests,active,group,content,dose,min_dose,max_dose,max_applications,\
      max_applications_season,min_interval,pre_harvest,re_entry,buffer_water,buffer_people,\
      rain_free,bees,cost_per_ha
      Product A,leek,leek moth,invented active one,28,200 g/L,0.125 L/ha,,0.15 L/ha,2,,10,7,12 h,5 m,none,4 h,\
      not while bees fly,62
      Product B,leek,leek moth,invented active two,5,240 g/L,0.3 L/ha,,0.4 L/ha,3,4,7,10,24 h,10 m,none,2 h,\
      not in bloom,55
      Product C,leek,leek moth,invented active three,11A,540 g/kg,0.8 kg/ha,,1 kg/ha,none,,5,none,none,none,none,6 h,\
      none,38
      Product A,cabbage,diamondback moth,invented active one,28,200 g/L,0.1 L/ha,,0.125 L/ha,2,,10,3,12 h,5 m,none,4 h,\
      not while bees fly,58
      Product C,cabbage,diamondback moth,invented active three,11A,540 g/kg,0.8 kg/ha,,1 kg/ha,none,,5,none,none,none,none,6 h,\
      none,38
      Product D,cabbage,diamondback moth; cabbage aphid,invented active four,3A,100 g/L,0.075 L/ha,,0.1 L/ha,2,,14,14,48 h,20 m,20 m,1 h,\
      not in bloom,21
      Product E,cabbage,cabbage aphid,invented active five,9B,500 g/kg,0.2 kg/ha,,0.2 kg/ha,2,3,,14,,5 m,,,,44
      """;

  private static final String THRESHOLDS =
      """
      pest,crop,unit,treat_from,cost_per_ha,crop_value_per_ha,currency,share_lost_per_pest,\
      share_prevented,source
      diamondback moth,cabbage,plant,,85,11000,EUR,0.012,0.8,invented for demonstration
      cabbage aphid,cabbage,plant,8,,,,,,invented for demonstration
      """;

  private static final String SPRAYERS =
      """
      sprayer,kind,tank,dead_volume,spray_volume,field
      knapsack,knapsack,15 L,0.2 L,400 L/ha,Upper Croft
      small tractor sprayer,mounted,200 L,4 L,300 L/ha,
      """;

  private static final String SPRAY_LIMITS =
      """
      wind_least_m_s,wind_most_m_s,air_most_c,dry_hours_before,dry_hours_after,inversion_wind_m_s,\
      inversion_minutes_before_sunset,inversion_minutes_after_sunrise
      0.5,3.5,24,2,4,1.5,60,60
      """;

  private static final int FORESEEN_DAYS = 6;

  private ProgrammeBook() {}

  /**
   * Weather of the days after the issue as somebody might have foreseen it, from its own stream.
   */
  private static String sprayWeather(long seed) {
    var draws = Draws.of(seed, "spray weather");
    var lines = new StringBuilder("time,wind_m_s,rain_mm,air_c\n");
    for (int day = 0; day < FORESEEN_DAYS; day++) {
      double calm = draws.uniform(0.6, 1.8);
      double mean = draws.uniform(13, 19);
      int shower = draws.uniform() < 0.5 ? draws.whole(3, 22) : -1;
      for (int hour = 0; hour < 24; hour++) {
        double height = Math.max(0, 1 - Math.abs(hour - 14) / 9.0);
        double wind = calm * (0.5 + 2.6 * height) + draws.uniform(0, 0.5);
        double rain = hour == shower || hour == shower + 1 ? draws.uniform(0.4, 3) : 0;
        lines.append(
            String.format(
                Locale.ROOT,
                "%sT%02d:00,%.1f,%.1f,%.1f\n",
                OsmereVale.ISSUE_DATE.plusDays(day),
                hour,
                wind,
                rain,
                mean - 5 + 11 * height));
      }
    }
    return lines.toString();
  }

  /** The tables by name of file. */
  static Map<String, String> tables(long seed) {
    var tables = new LinkedHashMap<String, String>();
    tables.put("fields.csv", FIELDS);
    tables.put("plantings.csv", PLANTINGS);
    tables.put("labels.csv", LABELS);
    tables.put("thresholds.csv", THRESHOLDS);
    tables.put("sprayers.csv", SPRAYERS);
    tables.put("spray-limits.csv", SPRAY_LIMITS);
    tables.put("spray-weather.csv", sprayWeather(seed));
    return tables;
  }
}
