/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Device Library</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Devices with the lines that they belong to, and bench results about them.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.DeviceLibrary#getLines <em>Lines</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceLibrary#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.DeviceLibrary#getBench <em>Bench</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getDeviceLibrary()
 * @model annotation="https://ferrule.invalid/annotation/1 suffix='.devices.json' format='ferrule.devices'"
 * @generated
 */
public interface DeviceLibrary extends Document
{
	/**
	 * Returns the value of the '<em><b>Lines</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.DeviceLine}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the sizes of one line have in common.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lines</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getDeviceLibrary_Lines()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Device lines'"
	 * @generated
	 */
	EList<DeviceLine> getLines();

	/**
	 * Returns the value of the '<em><b>Devices</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.Device}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The devices, one for each orderable size.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Devices</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getDeviceLibrary_Devices()
	 * @model containment="true"
	 * @generated
	 */
	EList<Device> getDevices();

	/**
	 * Returns the value of the '<em><b>Bench</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.BenchResult}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What was tried on a bench.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Bench</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getDeviceLibrary_Bench()
	 * @model containment="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Bench results'"
	 * @generated
	 */
	EList<BenchResult> getBench();

} // DeviceLibrary
