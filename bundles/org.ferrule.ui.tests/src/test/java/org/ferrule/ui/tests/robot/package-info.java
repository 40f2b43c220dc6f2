/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

/**
 * Drives the workbench as a user does: real mouse and key events, waiting for what should happen, pictures of the screen.
 */
package org.ferrule.ui.tests.robot;
