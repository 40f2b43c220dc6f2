/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.thresholds.renal;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

import org.ferrule.thresholds.Points;
import org.ferrule.thresholds.Points.Item;
import org.ferrule.thresholds.Source;

/** The points of a published score of contrast and kidney. They are an order; shares of a study are not told. */
public final class MehranScore {
    /** Where it was published. */
    public static final Source SOURCE = Source.seen("Mehran et al., J Am Coll Cardiol 2004;44:1393-9");
    private static final int OLD = 75;
    private static final int POINTS_OF_AGE = 4;
    private static final int POINTS_OF_CREATININE = 4;
    private static final int ML_A_POINT = 100;
    private static final BigDecimal HIGH_CREATININE = new BigDecimal("1.5");

    /** What is there or not. */
    public enum Trait {
        /** Systolic pressure below 80 mmHg for an hour or more that needs drugs or a pump. */
        HYPOTENSION(5),
        /** A balloon pump in the aorta. */
        BALLOON_PUMP(5),
        /** Heart failure of class III or IV, or a history of lung oedema. */
        HEART_FAILURE(5),
        /** A haematocrit below 39 % in men and 36 % in women. */
        ANAEMIA(3),
        /** Diabetes. */
        DIABETES(3);

        private final int points;

        Trait(int points) {
            this.points = points;
        }

        /** Returns its word, such as {@code heart-failure}. */
        public String word() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        private Item item(Map<Trait, Boolean> known) {
            return Item.of(word(), points, Optional.ofNullable(known.get(this)));
        }
    }

    /** The name that the publication gives to a sum of points. */
    public enum Band {
        /** Up to 5. */
        LOW,
        /** 6 to 10. */
        MODERATE,
        /** 11 to 16. */
        HIGH,
        /** 17 and more. */
        VERY_HIGH;

        private static final List<Integer> ENDS = List.of(5, 10, 16);

        /** Returns the band of a sum of points. */
        public static Band of(int points) {
            return values()[(int) ENDS.stream().filter(end -> points > end).count()];
        }
    }

    private MehranScore() {
    }

    /**
     * Adds the points up.
     *
     * @param ageYears completed years
     * @param kidney either the creatinine or the estimated filtration rate, for which the score has different points
     * @param contrastMl the volume given or planned; each full 100 mL is a point
     * @param known what is known to be there or not
     * @throws IllegalArgumentException naming what is not plausible, or telling that not just one figure was given
     */
    public static Points points(int ageYears, Map<RenalFigure, BigDecimal> kidney, BigDecimal contrastMl,
            Map<Trait, Boolean> known) {
        List<Item> items = new ArrayList<>();
        items.add(Item.known("age", ageYears > OLD ? POINTS_OF_AGE : 0));
        items.add(Item.known("kidney", kidney(kidney)));
        items.add(Item.known("contrast", ContrastLimit.VOLUME.check(contrastMl).intValue() / ML_A_POINT));
        Arrays.stream(Trait.values()).forEach(trait -> items.add(trait.item(known)));
        return new Points(items);
    }

    private static int kidney(Map<RenalFigure, BigDecimal> figures) {
        BigDecimal creatinine = figures.get(RenalFigure.CREATININE);
        BigDecimal rate = figures.get(RenalFigure.EGFR);
        if ((creatinine == null) == (rate == null)) {
            throw new IllegalArgumentException("either the creatinine or the filtration rate is needed");
        }
        if (creatinine != null) {
            return RenalFigure.CREATININE.scale().check(creatinine).compareTo(HIGH_CREATININE) > 0
                    ? POINTS_OF_CREATININE : 0;
        }
        return rate(RenalFigure.EGFR.scale().check(rate).doubleValue());
    }

    /** The printed ranges meet at 40 and 60; the value where they meet counts as the worse. */
    private static int rate(double mlPerMin) {
        if (mlPerMin < 20) {
            return 6;
        }
        return mlPerMin <= 40 ? 4 : mlPerMin <= 60 ? 2 : 0;
    }
}
