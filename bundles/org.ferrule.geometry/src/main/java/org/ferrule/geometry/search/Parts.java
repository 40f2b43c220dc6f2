/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.geometry.search;

import java.util.ArrayList;
import java.util.List;

/**
 * Bodies that are to be packed, as arrays for the inner loops. Each body has two variables, the place of its origin,
 * and one more, its angle, if it is more than one disc. The last variable is the radius of the circle round all.
 */
final class Parts {
    final List<Shape> shapes;
    /** The first variable of each body. */
    final int[] first;
    /** Whether the body has an angle. */
    final boolean[] turns;
    final int variables;
    /** The body of each disc. */
    final int[] body;
    final double[] offsetX;
    final double[] offsetY;
    final double[] radius;
    final Contact[] contacts;

    /**
     * Two discs of different bodies, or a disc and a bar, that may touch.
     *
     * @param disc the disc
     * @param from the other disc, or the first end of the bar
     * @param to the other disc, or the second end of the bar
     * @param mate the other end, if the disc is an end of a bar beside a bar; else the disc itself
     * @param distance the least distance of the disc's centre from the other centre or the bar's middle line
     */
    record Contact(int disc, int from, int to, int mate, double distance) {
    }

    Parts(List<Shape> shapes) {
        this.shapes = shapes;
        int discs = shapes.stream().mapToInt(Shape::size).sum();
        first = new int[shapes.size()];
        turns = new boolean[shapes.size()];
        body = new int[discs];
        offsetX = new double[discs];
        offsetY = new double[discs];
        radius = new double[discs];
        int[] firstDisc = new int[shapes.size()];
        int disc = 0;
        int variable = 0;
        for (int i = 0; i < shapes.size(); i++) {
            first[i] = variable;
            firstDisc[i] = disc;
            turns[i] = shapes.get(i).size() > 1;
            variable += turns[i] ? 3 : 2;
            for (int j = 0; j < shapes.get(i).size(); j++) {
                take(i, j, disc++);
            }
        }
        variables = variable + 1;
        contacts = contacts(firstDisc);
    }

    private void take(int i, int j, int disc) {
        Shape shape = shapes.get(i);
        body[disc] = i;
        offsetX[disc] = shape.x()[j];
        offsetY[disc] = shape.y()[j];
        radius[disc] = shape.radius()[j];
    }

    /** Tells whether a body has an angle. */
    boolean isTurning() {
        return shapes.stream().anyMatch(shape -> shape.size() > 1);
    }

    int discs() {
        return body.length;
    }

    private Contact[] contacts(int[] firstDisc) {
        List<Contact> found = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            for (int j = i + 1; j < shapes.size(); j++) {
                contacts(found, i, j, firstDisc);
            }
        }
        return found.toArray(Contact[]::new);
    }

    private void contacts(List<Contact> found, int i, int j, int[] firstDisc) {
        if (shapes.get(j).bar()) {
            discsOnBar(found, i, firstDisc[i], firstDisc[j]);
        }
        if (shapes.get(i).bar()) {
            discsOnBar(found, j, firstDisc[j], firstDisc[i]);
        }
        if (!shapes.get(i).bar() && !shapes.get(j).bar()) {
            for (int k = 0; k < shapes.get(i).size(); k++) {
                for (int m = 0; m < shapes.get(j).size(); m++) {
                    int disc = firstDisc[i] + k;
                    found.add(contact(disc, firstDisc[j] + m, firstDisc[j] + m, disc));
                }
            }
        }
    }

    private void discsOnBar(List<Contact> found, int body, int firstOfBody, int end) {
        for (int k = 0; k < shapes.get(body).size(); k++) {
            int disc = firstOfBody + k;
            int mate = shapes.get(body).bar() ? firstOfBody + 1 - k : disc;
            found.add(contact(disc, end, end + 1, mate));
        }
    }

    private Contact contact(int disc, int from, int to, int mate) {
        return new Contact(disc, from, to, mate, radius[disc] + radius[from]);
    }
}
