/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

/**
 * What keys of the table do beyond moving and typing.
 *
 * @param add adds a device
 * @param fillDown copies the uppermost selected cells into those below
 */
public record GridActions(Runnable add, Runnable fillDown) {
}
