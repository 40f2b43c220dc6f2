/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * The documents of Ferrule as EMF objects: device libraries, rule sets and fit charts, generated from
 * {@code model/ferrule.ecore}, and what goes beyond single objects: kinds of document and devices resolved with their
 * lines. Features that are not stated are {@code null} (or {@code isSet...} false): a stated default is kept apart from
 * none.
 */
package org.ferrule.model;
