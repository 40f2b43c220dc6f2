/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import org.ferrule.model.BenchResult;
import org.ferrule.model.Device;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.DeviceLine;
import org.ferrule.model.ModelPackage;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Device Library</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.DeviceLibraryImpl#getLines <em>Lines</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DeviceLibraryImpl#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.impl.DeviceLibraryImpl#getBench <em>Bench</em>}</li>
 * </ul>
 *
 * @generated
 */
public class DeviceLibraryImpl extends DocumentImpl implements DeviceLibrary
{
	/**
	 * The cached value of the '{@link #getLines() <em>Lines</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLines()
	 * @generated
	 * @ordered
	 */
	protected EList<DeviceLine> lines;

	/**
	 * The cached value of the '{@link #getDevices() <em>Devices</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDevices()
	 * @generated
	 * @ordered
	 */
	protected EList<Device> devices;

	/**
	 * The cached value of the '{@link #getBench() <em>Bench</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBench()
	 * @generated
	 * @ordered
	 */
	protected EList<BenchResult> bench;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected DeviceLibraryImpl()
	{
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass()
	{
		return ModelPackage.Literals.DEVICE_LIBRARY;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<DeviceLine> getLines()
	{
		if (lines == null)
		{
			lines = new EObjectContainmentEList<DeviceLine>(DeviceLine.class, this, ModelPackage.DEVICE_LIBRARY__LINES);
		}
		return lines;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Device> getDevices()
	{
		if (devices == null)
		{
			devices = new EObjectContainmentEList<Device>(Device.class, this, ModelPackage.DEVICE_LIBRARY__DEVICES);
		}
		return devices;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<BenchResult> getBench()
	{
		if (bench == null)
		{
			bench = new EObjectContainmentEList<BenchResult>(BenchResult.class, this, ModelPackage.DEVICE_LIBRARY__BENCH);
		}
		return bench;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs)
	{
		switch (featureID)
		{
			case ModelPackage.DEVICE_LIBRARY__LINES:
				return ((InternalEList<?>)getLines()).basicRemove(otherEnd, msgs);
			case ModelPackage.DEVICE_LIBRARY__DEVICES:
				return ((InternalEList<?>)getDevices()).basicRemove(otherEnd, msgs);
			case ModelPackage.DEVICE_LIBRARY__BENCH:
				return ((InternalEList<?>)getBench()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType)
	{
		switch (featureID)
		{
			case ModelPackage.DEVICE_LIBRARY__LINES:
				return getLines();
			case ModelPackage.DEVICE_LIBRARY__DEVICES:
				return getDevices();
			case ModelPackage.DEVICE_LIBRARY__BENCH:
				return getBench();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.DEVICE_LIBRARY__LINES:
				getLines().clear();
				getLines().addAll((Collection<? extends DeviceLine>)newValue);
				return;
			case ModelPackage.DEVICE_LIBRARY__DEVICES:
				getDevices().clear();
				getDevices().addAll((Collection<? extends Device>)newValue);
				return;
			case ModelPackage.DEVICE_LIBRARY__BENCH:
				getBench().clear();
				getBench().addAll((Collection<? extends BenchResult>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.DEVICE_LIBRARY__LINES:
				getLines().clear();
				return;
			case ModelPackage.DEVICE_LIBRARY__DEVICES:
				getDevices().clear();
				return;
			case ModelPackage.DEVICE_LIBRARY__BENCH:
				getBench().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID)
	{
		switch (featureID)
		{
			case ModelPackage.DEVICE_LIBRARY__LINES:
				return lines != null && !lines.isEmpty();
			case ModelPackage.DEVICE_LIBRARY__DEVICES:
				return devices != null && !devices.isEmpty();
			case ModelPackage.DEVICE_LIBRARY__BENCH:
				return bench != null && !bench.isEmpty();
		}
		return super.eIsSet(featureID);
	}

} //DeviceLibraryImpl
