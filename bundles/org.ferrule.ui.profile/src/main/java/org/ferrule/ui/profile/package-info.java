/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/** The workbench for profiles: devices compared along their length. */
package org.ferrule.ui.profile;
