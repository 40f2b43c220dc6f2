/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/** The points at which plug-ins add checks, and exporters of charts and pictures; the built-in ones use the same points. */
package org.ferrule.engine.extension;
