/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** The devices of all libraries of a chart, read so that what has not changed keeps its record. */
package org.ferrule.engine.catalogue;
