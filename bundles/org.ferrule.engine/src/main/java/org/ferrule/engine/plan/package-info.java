/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
/**
 * From a case with its techniques, its libraries and its shelf to what a planner needs. What cannot be read never makes
 * a plan look easier: it is told, and what depends on it cannot be planned with.
 */
package org.ferrule.engine.plan;
