/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Writes pictures as PNG, by the graphics of the Java platform and without a display. Programs that have a window
 * toolkit of their own set the system property {@code java.awt.headless}.
 */
package org.ferrule.io.png;
