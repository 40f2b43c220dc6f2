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
public record Block(String label, List<String> lines, TextStyle style, double indentMm, double afterMm) {
    public Block {
        lines = List.copyOf(lines);
    }

    /** The room that it takes, with what is kept free below. */
    public double heightMm() {
        return lines.size() * PageStyle.leading(style) + afterMm;
    }

    /** Draws it with its upper left corner at a place. */
    public void draw(PictureBuilder g, double xMm, double yMm) {
        double baseline = PageStyle.baseline(yMm, style);
        g.lettering(style).text(xMm, baseline, label).lines(xMm + indentMm, baseline, PageStyle.leading(style), lines);
    }

    /** Blocks set below each other in columns. */
    public record Columns(List<List<Block>> columns, double columnMm, double gapMm) {
        public Columns {
            columns = columns.stream().map(List::copyOf).toList();
        }

        /** The height of the longest column. */
        public double heightMm() {
            return columns.stream().mapToDouble(Columns::heightOf).max().orElse(0);
        }

        private static double heightOf(List<Block> column) {
            return column.stream().mapToDouble(Block::heightMm).sum();
        }

        /** Draws them with their upper left corner at a place. */
        public void draw(PictureBuilder g, double xMm, double yMm) {
            for (int i = 0; i < columns.size(); i++) {
                double y = yMm;
                for (Block block : columns.get(i)) {
                    block.draw(g, xMm + i * (columnMm + gapMm), y);
                    y += block.heightMm();
                }
            }
        }

        /** How many blocks there are. */
        public int size() {
            return columns.stream().mapToInt(List::size).sum();
        }
    }

    /**
     * Sets as many blocks as there is room for, in columns of about one height.
     *
     * @param mostMm the height that there is room for
     */
    public static Columns set(List<Block> blocks, int columns, double columnMm, double gapMm, double mostMm) {
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
