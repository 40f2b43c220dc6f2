/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.picture;

/** One thing in a picture. Later elements are painted over earlier ones. */
public sealed interface Element permits Line, Shape, Text, Group {

    /** Has this element painted by the method of the painter that is meant for it. */
    <E extends Exception> void paintOn(Painter<E> painter) throws E;
}
