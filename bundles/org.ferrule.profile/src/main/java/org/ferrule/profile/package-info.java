/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * Two to eight devices compared along their length: curves, marks, first contacts with lumens, where curves cross.
 * Immutable, without OSGi and without a display. A figure that is not known stays unknown.
 */
package org.ferrule.profile;
