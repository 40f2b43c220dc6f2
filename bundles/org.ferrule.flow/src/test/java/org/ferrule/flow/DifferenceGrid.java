/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.flow;

import java.util.Arrays;
import java.util.List;

/**
 * A second opinion: the Poisson equation on a square grid, by successive over-relaxation. Next to a circle the stencil
 * has unequal arms that end on it (Shortley and Weller), so that the error falls with the square of the cell.
 */
final class DifferenceGrid {
    private static final double SETTLED = 1e-9;

    private final int size;
    private final double cell;
    private final List<Circle> discs;
    private final double[] flow;
    private final int[] inside;
    private final double[][] weights;

    private DifferenceGrid(List<Circle> discs, int cells) {
        this.discs = discs;
        size = cells + 1;
        cell = 2.0 / cells;
        flow = new double[size * size];
        int[] found = new int[size * size];
        int count = 0;
        for (int k = 0; k < found.length; k++) {
            if (isFluid(x(k), y(k))) {
                found[count++] = k;
            }
        }
        inside = Arrays.copyOf(found, count);
        weights = Arrays.stream(inside).mapToObj(this::stencil).toArray(double[][]::new);
    }

    /** Returns the share, extrapolated from grids of so many cells across the lumen and of twice as many. */
    static double share(List<Circle> discs, int cells) {
        double coarse = new DifferenceGrid(discs, cells).solve();
        double fine = new DifferenceGrid(discs, 2 * cells).solve();
        return fine + (fine - coarse) / 3;
    }

    private double x(int k) {
        return k % size * cell - 1;
    }

    private double y(int k) {
        return k / size * cell - 1;
    }

    private boolean isFluid(double x, double y) {
        return Math.hypot(x, y) < 1 - 1e-12 && discs.stream()
                .allMatch(d -> Math.hypot(x - d.centre().re(), y - d.centre().im()) > d.radius() + 1e-12);
    }

    /** The neighbours' weights and the source, all divided by the weight of the point itself. */
    private double[] stencil(int k) {
        double east = arm(k, 1, 0);
        double west = arm(k, -1, 0);
        double north = arm(k, 0, 1);
        double south = arm(k, 0, -1);
        double own = 2 / (east * west) + 2 / (north * south);
        return new double[] { weight(east, west) / own, weight(west, east) / own, weight(north, south) / own,
            weight(south, north) / own, 4 / own };
    }

    /** Nothing flows at the end of an arm that a circle cuts, whatever lies behind it. */
    private double weight(double arm, double opposite) {
        return arm < cell ? 0 : 2 / (arm * (arm + opposite));
    }

    /** The way to the neighbour, or to the first circle that crosses it. */
    private double arm(int k, int right, int up) {
        double arm = Math.min(cell, crossing(k, right, up, new Circle(new Complex(0, 0), 1), 1));
        for (Circle disc : discs) {
            arm = Math.min(arm, crossing(k, right, up, disc, -1));
        }
        return arm;
    }

    private double crossing(int k, int right, int up, Circle circle, int side) {
        double dx = x(k) - circle.centre().re();
        double dy = y(k) - circle.centre().im();
        double along = dx * right + dy * up;
        double root = along * along - dx * dx - dy * dy + circle.radius() * circle.radius();
        double way = root < 0 ? -1 : -along + side * Math.sqrt(root);
        return way > 0 ? way : Double.POSITIVE_INFINITY;
    }

    private double solve() {
        double factor = 2 / (1 + Math.sin(Math.PI / size));
        double change = 1;
        while (change > SETTLED) {
            change = sweep(factor);
        }
        // The empty lumen lets through pi/2.
        return Arrays.stream(flow).sum() * cell * cell / (Math.PI / 2);
    }

    private double sweep(double factor) {
        double change = 0;
        for (int i = 0; i < inside.length; i++) {
            int k = inside[i];
            double[] w = weights[i];
            double next = w[0] * flow[k + 1] + w[1] * flow[k - 1] + w[2] * flow[k + size] + w[3] * flow[k - size]
                    + w[4];
            double step = factor * (next - flow[k]);
            flow[k] += step;
            change = Math.max(change, Math.abs(step));
        }
        return change;
    }
}
