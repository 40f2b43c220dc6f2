/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.WireTraits;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Wire Traits</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.WireTraitsImpl#getTipLoad <em>Tip Load</em>}</li>
 *   <li>{@link org.ferrule.model.impl.WireTraitsImpl#getTipShape <em>Tip Shape</em>}</li>
 *   <li>{@link org.ferrule.model.impl.WireTraitsImpl#isExtendable <em>Extendable</em>}</li>
 *   <li>{@link org.ferrule.model.impl.WireTraitsImpl#getCoating <em>Coating</em>}</li>
 * </ul>
 *
 * @generated
 */
public class WireTraitsImpl extends SourcedImpl implements WireTraits
{
	/**
	 * The default value of the '{@link #getTipLoad() <em>Tip Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTipLoad()
	 * @generated
	 * @ordered
	 */
	protected static final String TIP_LOAD_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTipLoad() <em>Tip Load</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTipLoad()
	 * @generated
	 * @ordered
	 */
	protected String tipLoad = TIP_LOAD_EDEFAULT;

	/**
	 * The default value of the '{@link #getTipShape() <em>Tip Shape</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTipShape()
	 * @generated
	 * @ordered
	 */
	protected static final String TIP_SHAPE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getTipShape() <em>Tip Shape</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTipShape()
	 * @generated
	 * @ordered
	 */
	protected String tipShape = TIP_SHAPE_EDEFAULT;

	/**
	 * The default value of the '{@link #isExtendable() <em>Extendable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isExtendable()
	 * @generated
	 * @ordered
	 */
	protected static final boolean EXTENDABLE_EDEFAULT = false;

	/**
	 * The cached value of the '{@link #isExtendable() <em>Extendable</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isExtendable()
	 * @generated
	 * @ordered
	 */
	protected boolean extendable = EXTENDABLE_EDEFAULT;

	/**
	 * This is true if the Extendable attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean extendableESet;

	/**
	 * The default value of the '{@link #getCoating() <em>Coating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoating()
	 * @generated
	 * @ordered
	 */
	protected static final String COATING_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoating() <em>Coating</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoating()
	 * @generated
	 * @ordered
	 */
	protected String coating = COATING_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected WireTraitsImpl()
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
		return ModelPackage.Literals.WIRE_TRAITS;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTipLoad()
	{
		return tipLoad;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTipLoad(String newTipLoad)
	{
		String oldTipLoad = tipLoad;
		tipLoad = newTipLoad;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WIRE_TRAITS__TIP_LOAD, oldTipLoad, tipLoad));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getTipShape()
	{
		return tipShape;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setTipShape(String newTipShape)
	{
		String oldTipShape = tipShape;
		tipShape = newTipShape;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WIRE_TRAITS__TIP_SHAPE, oldTipShape, tipShape));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isExtendable()
	{
		return extendable;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExtendable(boolean newExtendable)
	{
		boolean oldExtendable = extendable;
		extendable = newExtendable;
		boolean oldExtendableESet = extendableESet;
		extendableESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WIRE_TRAITS__EXTENDABLE, oldExtendable, extendable, !oldExtendableESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetExtendable()
	{
		boolean oldExtendable = extendable;
		boolean oldExtendableESet = extendableESet;
		extendable = EXTENDABLE_EDEFAULT;
		extendableESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.WIRE_TRAITS__EXTENDABLE, oldExtendable, EXTENDABLE_EDEFAULT, oldExtendableESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetExtendable()
	{
		return extendableESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCoating()
	{
		return coating;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoating(String newCoating)
	{
		String oldCoating = coating;
		coating = newCoating;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.WIRE_TRAITS__COATING, oldCoating, coating));
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
			case ModelPackage.WIRE_TRAITS__TIP_LOAD:
				return getTipLoad();
			case ModelPackage.WIRE_TRAITS__TIP_SHAPE:
				return getTipShape();
			case ModelPackage.WIRE_TRAITS__EXTENDABLE:
				return isExtendable();
			case ModelPackage.WIRE_TRAITS__COATING:
				return getCoating();
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
			case ModelPackage.WIRE_TRAITS__TIP_LOAD:
				setTipLoad((String)newValue);
				return;
			case ModelPackage.WIRE_TRAITS__TIP_SHAPE:
				setTipShape((String)newValue);
				return;
			case ModelPackage.WIRE_TRAITS__EXTENDABLE:
				setExtendable((Boolean)newValue);
				return;
			case ModelPackage.WIRE_TRAITS__COATING:
				setCoating((String)newValue);
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
			case ModelPackage.WIRE_TRAITS__TIP_LOAD:
				setTipLoad(TIP_LOAD_EDEFAULT);
				return;
			case ModelPackage.WIRE_TRAITS__TIP_SHAPE:
				setTipShape(TIP_SHAPE_EDEFAULT);
				return;
			case ModelPackage.WIRE_TRAITS__EXTENDABLE:
				unsetExtendable();
				return;
			case ModelPackage.WIRE_TRAITS__COATING:
				setCoating(COATING_EDEFAULT);
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
			case ModelPackage.WIRE_TRAITS__TIP_LOAD:
				return TIP_LOAD_EDEFAULT == null ? tipLoad != null : !TIP_LOAD_EDEFAULT.equals(tipLoad);
			case ModelPackage.WIRE_TRAITS__TIP_SHAPE:
				return TIP_SHAPE_EDEFAULT == null ? tipShape != null : !TIP_SHAPE_EDEFAULT.equals(tipShape);
			case ModelPackage.WIRE_TRAITS__EXTENDABLE:
				return isSetExtendable();
			case ModelPackage.WIRE_TRAITS__COATING:
				return COATING_EDEFAULT == null ? coating != null : !COATING_EDEFAULT.equals(coating);
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
		result.append(" (tipLoad: ");
		result.append(tipLoad);
		result.append(", tipShape: ");
		result.append(tipShape);
		result.append(", extendable: ");
		if (extendableESet) result.append(extendable); else result.append("<unset>");
		result.append(", coating: ");
		result.append(coating);
		result.append(')');
		return result.toString();
	}

} //WireTraitsImpl
