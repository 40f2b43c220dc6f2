/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.Arrays;
import java.util.SplittableRandom;

/**
 * Makes arrangements to start from, and changes good ones. The same numbers are drawn every time, so that the same
 * bodies always get the same answer.
 */
final class Starts {
    /** The part of the first circle that bodies shall cover; a little more than they will in the end. */
    private static final double COVER = 0.7;

    private final Parts parts;
    private final Cluster cluster;
    private final SplittableRandom random = new SplittableRandom(20261125);
    private final double radius;
    private final Rings rings;
    private int fresh;
    private int ring;

    Starts(Parts parts) {
        this.parts = parts;
        cluster = new Cluster(parts, random);
        rings = new Rings(parts.isTurning() ? new double[0] : parts.radius);
        double squares = Arrays.stream(parts.radius).map(r -> r * r).sum();
        double widest = parts.shapes.stream().mapToDouble(Shape::reach).max().orElseThrow();
        radius = Math.max(widest, Math.sqrt(squares / COVER));
    }

    /** Writes an arrangement that has nothing to do with former ones: scattered bodies, or a cluster in touch. */
    void fresh(double[] variables) {
        turnAll(variables);
        if (fresh++ % 2 == 0) {
            variables[parts.variables - 1] = radius;
            for (int i = 0; i < parts.first.length; i++) {
                throwIn(variables, i);
            }
        } else {
            cluster.write(variables);
        }
    }

    /** Returns how many rings there are to start from; none of many bodies, and none of bodies that turn. */
    int rings() {
        return rings.size();
    }

    /** Writes the next ring. */
    void ring(double[] variables) {
        rings.write(ring++, radius, variables);
    }

    private void turnAll(double[] variables) {
        for (int i = 0; i < parts.first.length; i++) {
            turn(variables, i);
        }
    }

    private void turn(double[] variables, int body) {
        if (parts.turns[body]) {
            variables[parts.first[body] + 2] = random.nextDouble() * 2 * Math.PI;
        }
    }

    private void throwIn(double[] variables, int body) {
        double most = Math.max(0, variables[parts.variables - 1] - parts.shapes.get(body).reach());
        double distance = Math.sqrt(random.nextDouble()) * most;
        double angle = random.nextDouble() * 2 * Math.PI;
        variables[parts.first[body]] = distance * StrictMath.cos(angle);
        variables[parts.first[body] + 1] = distance * StrictMath.sin(angle);
    }

    /** Changes an arrangement: one body to another place, or two into each other's. */
    void change(double[] variables) {
        int bodies = parts.first.length;
        int one = random.nextInt(bodies);
        turn(variables, one);
        if (bodies == 1 || random.nextBoolean()) {
            throwIn(variables, one);
        } else {
            int other = (one + 1 + random.nextInt(bodies - 1)) % bodies;
            swap(variables, parts.first[one], parts.first[other]);
            swap(variables, parts.first[one] + 1, parts.first[other] + 1);
        }
    }

    private static void swap(double[] variables, int one, int other) {
        double kept = variables[one];
        variables[one] = variables[other];
        variables[other] = kept;
    }
}
