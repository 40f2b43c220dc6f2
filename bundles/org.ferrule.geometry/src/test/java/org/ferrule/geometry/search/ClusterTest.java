/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Clusters of discs that touch, each as close to the middle of the former ones as it can be, or next to that. */
class ClusterTest {
    private static final double[] RADII = { 1, 0.7, 0.55, 0.4, 0.25 };
    private static final double CLOSE = 1e-9;

    private final List<double[]> clusters = new ArrayList<>();

    ClusterTest() {
        Parts parts = new Parts(Arrays.stream(RADII).mapToObj(Shape::disc).toList());
        Cluster cluster = new Cluster(parts, new SplittableRandom(1));
        for (int i = 0; i < 40; i++) {
            double[] variables = new double[parts.variables];
            cluster.write(variables);
            clusters.add(variables);
        }
    }

    @Test
    void noneOverlapAndAlmostAllTouchTwoOthers() {
        for (double[] cluster : clusters) {
            int touching = 0;
            for (int i = 0; i < RADII.length; i++) {
                for (int j = 0; j < i; j++) {
                    double gap = distance(cluster, i, j) - RADII[i] - RADII[j];
                    assertTrue(gap > -CLOSE, () -> Arrays.toString(cluster));
                    touching += gap < CLOSE ? 1 : 0;
                }
            }
            assertTrue(touching >= 2 * RADII.length - 3, () -> Arrays.toString(cluster));
        }
    }

    @Test
    void theMiddleOfTheirAreasIsInTheMiddle() {
        for (double[] cluster : clusters) {
            double[] middle = middle(cluster, List.of(0, 1, 2, 3, 4));
            assertEquals(0, middle[0], CLOSE);
            assertEquals(0, middle[1], CLOSE);
        }
    }

    @Test
    void theRadiusIsALittleTooSmall() {
        for (double[] cluster : clusters) {
            double needed = IntStream.range(0, RADII.length)
                    .mapToDouble(i -> Math.hypot(cluster[2 * i], cluster[2 * i + 1]) + RADII[i]).max().orElseThrow();
            assertEquals(0.97 * needed, cluster[2 * RADII.length], CLOSE);
        }
    }

    @Test
    void eachLiesWhereItIsClosestToTheMiddleOrNextToThat() {
        int[] ranks = new int[2];
        for (double[] cluster : clusters) {
            boolean allBest = isBuilt(cluster, new ArrayList<>(), 1);
            assertTrue(allBest || isBuilt(cluster, new ArrayList<>(), 2), () -> Arrays.toString(cluster));
            ranks[allBest ? 0 : 1]++;
        }
        assertTrue(ranks[0] > 0 && ranks[1] > 0, () -> Arrays.toString(ranks));
    }

    @Test
    void largeOnesComeRatherFirst() {
        double[] mean = new double[2];
        for (double[] cluster : clusters) {
            mean[0] += Math.hypot(cluster[0], cluster[1]) / clusters.size();
            mean[1] += Math.hypot(cluster[8], cluster[9]) / clusters.size();
        }
        assertTrue(mean[0] < mean[1], () -> Arrays.toString(mean));
    }

    /** Tells whether there is an order in which each disc has one of the best places beside the former ones. */
    private static boolean isBuilt(double[] cluster, List<Integer> former, int places) {
        if (former.size() == RADII.length) {
            return true;
        }
        for (int disc = 0; disc < RADII.length; disc++) {
            if (!former.contains(disc) && rank(cluster, former, disc) < places) {
                List<Integer> more = new ArrayList<>(former);
                more.add(disc);
                if (isBuilt(cluster, more, places)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** How many free places in touch with two others are closer to the middle; many if the disc is in none of them. */
    private static int rank(double[] cluster, List<Integer> former, int disc) {
        if (former.size() < 2) {
            return former.isEmpty() || distance(cluster, disc, former.get(0)) < RADII[disc] + RADII[former.get(0)]
                    + CLOSE ? 0 : RADII.length;
        }
        double[] middle = middle(cluster, former);
        List<double[]> places = new ArrayList<>();
        former.forEach(i -> former.stream().filter(j -> !j.equals(i))
                .forEach(j -> places.addAll(touching(cluster, i, j, RADII[disc]))));
        places.removeIf(place -> former.stream().anyMatch(k -> Math.hypot(place[0] - cluster[2 * k],
                place[1] - cluster[2 * k + 1]) < RADII[k] + RADII[disc] - CLOSE));
        places.sort(Comparator.comparingDouble(place -> Math.hypot(place[0] - middle[0], place[1] - middle[1])));
        return IntStream.range(0, places.size())
                .filter(p -> Math.hypot(places.get(p)[0] - cluster[2 * disc], places.get(p)[1]
                        - cluster[2 * disc + 1]) < CLOSE)
                .findFirst().orElse(RADII.length);
    }

    /** The place on one side of the line from one disc to another where a third touches both, by the law of cosines. */
    private static List<double[]> touching(double[] cluster, int i, int j, double radius) {
        double apart = distance(cluster, i, j);
        double a = RADII[i] + radius;
        double b = RADII[j] + radius;
        double cosine = (a * a + apart * apart - b * b) / (2 * a * apart);
        if (Math.abs(cosine) > 1) {
            return List.of();
        }
        double angle = Math.atan2(cluster[2 * j + 1] - cluster[2 * i + 1], cluster[2 * j] - cluster[2 * i])
                + Math.acos(cosine);
        return List.of(new double[] { cluster[2 * i] + a * Math.cos(angle), cluster[2 * i + 1] + a * Math.sin(angle) });
    }

    private static double[] middle(double[] cluster, List<Integer> discs) {
        double area = discs.stream().mapToDouble(i -> RADII[i] * RADII[i]).sum();
        return new double[] { discs.stream().mapToDouble(i -> RADII[i] * RADII[i] * cluster[2 * i]).sum() / area,
            discs.stream().mapToDouble(i -> RADII[i] * RADII[i] * cluster[2 * i + 1]).sum() / area };
    }

    private static double distance(double[] cluster, int i, int j) {
        return Math.hypot(cluster[2 * i] - cluster[2 * j], cluster[2 * i + 1] - cluster[2 * j + 1]);
    }
}
