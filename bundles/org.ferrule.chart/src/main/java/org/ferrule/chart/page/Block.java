/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart.page;

import java.util.ArrayList;
import java.util.List;

import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.TextStyle;

/**
 * Lines of text that stay together.
 *
 * @param label in front of the first line, such as a number; may be empty
 * @param lines of text
 * @param style of all of them
 * @param indentMm of the lines
 * @param afterMm room below
 */
record Block(String label, List<String> lines, TextStyle style, double indentMm, double afterMm) {
    Block {
        lines = List.copyOf(lines);
    }

    double heightMm() {
        return lines.size() * PageStyle.leading(style) + afterMm;
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        double baseline = PageStyle.baseline(yMm, style);
        g.lettering(style).text(xMm, baseline, label).lines(xMm + indentMm, baseline, PageStyle.leading(style), lines);
    }

    /** Blocks set below each other in columns. */
    record Columns(List<List<Block>> columns, double columnMm, double gapMm) {

        double heightMm() {
            return columns.stream().mapToDouble(Columns::heightOf).max().orElse(0);
        }

        private static double heightOf(List<Block> column) {
            return column.stream().mapToDouble(Block::heightMm).sum();
        }

        void draw(PictureBuilder g, double xMm, double yMm) {
            for (int i = 0; i < columns.size(); i++) {
                double y = yMm;
                for (Block block : columns.get(i)) {
                    block.draw(g, xMm + i * (columnMm + gapMm), y);
                    y += block.heightMm();
                }
            }
        }

        int size() {
            return columns.stream().mapToInt(List::size).sum();
        }
    }

    /**
     * Sets as many blocks as there is room for, in columns of about one height.
     *
     * @param mostMm the height that there is room for
     */
    static Columns set(List<Block> blocks, int columns, double columnMm, double gapMm, double mostMm) {
        double height = blocks.stream().mapToDouble(Block::heightMm).max().orElse(0);
        while (height < mostMm && count(filled(blocks, columns, height)) < blocks.size()) {
            height = Math.min(mostMm, height + 1);
        }
        return new Columns(filled(blocks, columns, Math.min(height, mostMm)), columnMm, gapMm);
    }

    private static int count(List<List<Block>> columns) {
        return columns.stream().mapToInt(List::size).sum();
    }

    private static List<List<Block>> filled(List<Block> blocks, int columns, double heightMm) {
        List<List<Block>> filled = new ArrayList<>();
        int next = 0;
        for (int column = 0; column < columns; column++) {
            List<Block> stack = new ArrayList<>();
            double used = 0;
            while (next < blocks.size() && used + blocks.get(next).heightMm() <= heightMm + 1e-9) {
                used += blocks.get(next).heightMm();
                stack.add(blocks.get(next++));
            }
            filled.add(stack);
        }
        return filled;
    }
}
