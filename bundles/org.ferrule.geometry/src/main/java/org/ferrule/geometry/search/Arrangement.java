/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where bodies lie in a circle about the origin.
 *
 * @param discs the centres of all discs, body by body; of a bar the two ends
 * @param radius the radius of the circle, but for rounding
 */
public record Arrangement(List<Centre> discs, double radius) {

    /**
     * A centre.
     *
     * @param x to the right of the circle's centre
     * @param y above the circle's centre
     */
    public record Centre(double x, double y) {
    }

    /** Returns the bodies as they are drawn, each upon the one before: a poor answer, but always one. */
    public static Arrangement pile(List<Shape> shapes) {
        double bottom = -shapes.stream().mapToDouble(Shape::halfHeight).sum();
        double radius = 0;
        List<Centre> centres = new ArrayList<>();
        for (Shape shape : shapes) {
            double middle = bottom + shape.halfHeight();
            for (int i = 0; i < shape.size(); i++) {
                centres.add(new Centre(shape.x()[i], middle + shape.y()[i]));
                radius = Math.max(radius, StrictMath.hypot(shape.x()[i], middle + shape.y()[i]) + shape.radius()[i]);
            }
            bottom = middle + shape.halfHeight();
        }
        return new Arrangement(centres, radius);
    }

    /** Returns the closest arrangement in which the discs of each body lie as the body demands. */
    public Arrangement fitted(List<Shape> shapes) {
        Parts parts = new Parts(shapes);
        double[] variables = new double[parts.variables];
        write(parts, 1, variables);
        return read(parts, 1, variables);
    }

    static Arrangement read(Parts parts, double unit, double[] variables) {
        Places places = new Places(parts);
        places.locate(variables);
        return new Arrangement(IntStream.range(0, parts.discs())
                .mapToObj(i -> new Centre(places.x[i] * unit, places.y[i] * unit)).toList(),
                variables[parts.variables - 1] * unit);
    }

    /** Writes the variables that bring each body's discs as close to these places as a rigid body can. */
    void write(Parts parts, double unit, double[] variables) {
        int disc = 0;
        for (int i = 0; i < parts.first.length; i++) {
            int size = parts.shapes.get(i).size();
            write(parts, unit, variables, i, disc);
            disc += size;
        }
        variables[parts.variables - 1] = radius / unit;
    }

    private void write(Parts parts, double unit, double[] variables, int body, int firstDisc) {
        Shape shape = parts.shapes.get(body);
        Centre here = middle(firstDisc, shape.size());
        double ownX = IntStream.range(0, shape.size()).mapToDouble(i -> shape.x()[i]).average().orElseThrow();
        double ownY = IntStream.range(0, shape.size()).mapToDouble(i -> shape.y()[i]).average().orElseThrow();
        double cos = 0;
        double sin = 0;
        for (int i = 0; i < shape.size(); i++) {
            double armX = shape.x()[i] - ownX;
            double armY = shape.y()[i] - ownY;
            // What the middle adds to both sums is nothing, for the arms add up to nothing.
            Centre there = discs.get(firstDisc + i);
            cos += armX * there.x() + armY * there.y();
            sin += armX * there.y() - armY * there.x();
        }
        double angle = parts.turns[body] ? StrictMath.atan2(sin, cos) : 0;
        int first = parts.first[body];
        variables[first] = here.x() / unit - StrictMath.cos(angle) * ownX + StrictMath.sin(angle) * ownY;
        variables[first + 1] = here.y() / unit - StrictMath.sin(angle) * ownX - StrictMath.cos(angle) * ownY;
        if (parts.turns[body]) {
            variables[first + 2] = angle;
        }
    }

    private Centre middle(int from, int count) {
        return new Centre(discs.subList(from, from + count).stream().mapToDouble(Centre::x).average().orElseThrow(),
                discs.subList(from, from + count).stream().mapToDouble(Centre::y).average().orElseThrow());
    }
}
