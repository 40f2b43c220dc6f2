/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.ThroughExtension;

import org.ferrule.quantity.Offset;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Through Extension</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.ThroughExtensionImpl#getExtension <em>Extension</em>}</li>
 *   <li>{@link org.ferrule.model.impl.ThroughExtensionImpl#getProtrusion <em>Protrusion</em>}</li>
 * </ul>
 *
 * @generated
 */
public class ThroughExtensionImpl extends ElementImpl implements ThroughExtension
{
	/**
	 * The default value of the '{@link #getExtension() <em>Extension</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExtension()
	 * @generated
	 * @ordered
	 */
	protected static final String EXTENSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExtension() <em>Extension</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExtension()
	 * @generated
	 * @ordered
	 */
	protected String extension = EXTENSION_EDEFAULT;

	/**
	 * The default value of the '{@link #getProtrusion() <em>Protrusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtrusion()
	 * @generated
	 * @ordered
	 */
	protected static final Offset PROTRUSION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getProtrusion() <em>Protrusion</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getProtrusion()
	 * @generated
	 * @ordered
	 */
	protected Offset protrusion = PROTRUSION_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected ThroughExtensionImpl()
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
		return ModelPackage.Literals.THROUGH_EXTENSION;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getExtension()
	{
		return extension;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExtension(String newExtension)
	{
		String oldExtension = extension;
		extension = newExtension;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.THROUGH_EXTENSION__EXTENSION, oldExtension, extension));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Offset getProtrusion()
	{
		return protrusion;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setProtrusion(Offset newProtrusion)
	{
		Offset oldProtrusion = protrusion;
		protrusion = newProtrusion;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.THROUGH_EXTENSION__PROTRUSION, oldProtrusion, protrusion));
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
			case ModelPackage.THROUGH_EXTENSION__EXTENSION:
				return getExtension();
			case ModelPackage.THROUGH_EXTENSION__PROTRUSION:
				return getProtrusion();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue)
	{
		switch (featureID)
		{
			case ModelPackage.THROUGH_EXTENSION__EXTENSION:
				setExtension((String)newValue);
				return;
			case ModelPackage.THROUGH_EXTENSION__PROTRUSION:
				setProtrusion((Offset)newValue);
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
			case ModelPackage.THROUGH_EXTENSION__EXTENSION:
				setExtension(EXTENSION_EDEFAULT);
				return;
			case ModelPackage.THROUGH_EXTENSION__PROTRUSION:
				setProtrusion(PROTRUSION_EDEFAULT);
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
			case ModelPackage.THROUGH_EXTENSION__EXTENSION:
				return EXTENSION_EDEFAULT == null ? extension != null : !EXTENSION_EDEFAULT.equals(extension);
			case ModelPackage.THROUGH_EXTENSION__PROTRUSION:
				return PROTRUSION_EDEFAULT == null ? protrusion != null : !PROTRUSION_EDEFAULT.equals(protrusion);
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString()
	{
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (extension: ");
		result.append(extension);
		result.append(", protrusion: ");
		result.append(protrusion);
		result.append(')');
		return result.toString();
	}

} //ThroughExtensionImpl
