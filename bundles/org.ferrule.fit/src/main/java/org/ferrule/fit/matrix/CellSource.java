/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.fit.matrix;

/** Where the cells of a question come from. Safe to use from many threads. */
interface CellSource {

    /** The source for the next question. */
    CellSource next(MatrixQuestion question, Comparison comparison);

    /** A reader for the use of one thread. */
    Reader reader();

    /** Works out cells one by one. */
    interface Reader {

        /** The word of a cell. */
        long word(int line, int column);

        /** Puts in the words of that part of a line that lies in a tile, from a place on. */
        void tileLine(int line, int tileColumn, long[] words, int at);
    }
}
