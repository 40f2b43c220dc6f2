/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Lists and forms for the parts of what a document holds: one {@link org.ferrule.ui.devices.part.PartList} for every kind
 * of part. A part may be stated by a device itself or inherited from its line.
 */
package org.ferrule.ui.devices.part;
