/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import java.math.BigDecimal;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.Bend;
import org.ferrule.model.BendPlace;
import org.ferrule.model.ModelPackage;

import org.ferrule.quantity.Dimension;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Bend</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.BendImpl#getWhere <em>Where</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BendImpl#getRadius <em>Radius</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BendImpl#getAngleDegrees <em>Angle Degrees</em>}</li>
 *   <li>{@link org.ferrule.model.impl.BendImpl#getVesselDiameter <em>Vessel Diameter</em>}</li>
 * </ul>
 *
 * @generated
 */
public class BendImpl extends ElementImpl implements Bend
{
	/**
	 * The default value of the '{@link #getWhere() <em>Where</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWhere()
	 * @generated
	 * @ordered
	 */
	protected static final BendPlace WHERE_EDEFAULT = BendPlace.LUMEN;

	/**
	 * The cached value of the '{@link #getWhere() <em>Where</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getWhere()
	 * @generated
	 * @ordered
	 */
	protected BendPlace where = WHERE_EDEFAULT;

	/**
	 * This is true if the Where attribute has been set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 * @ordered
	 */
	protected boolean whereESet;

	/**
	 * The default value of the '{@link #getRadius() <em>Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRadius()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension RADIUS_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getRadius() <em>Radius</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRadius()
	 * @generated
	 * @ordered
	 */
	protected Dimension radius = RADIUS_EDEFAULT;

	/**
	 * The default value of the '{@link #getAngleDegrees() <em>Angle Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAngleDegrees()
	 * @generated
	 * @ordered
	 */
	protected static final BigDecimal ANGLE_DEGREES_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getAngleDegrees() <em>Angle Degrees</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAngleDegrees()
	 * @generated
	 * @ordered
	 */
	protected BigDecimal angleDegrees = ANGLE_DEGREES_EDEFAULT;

	/**
	 * The default value of the '{@link #getVesselDiameter() <em>Vessel Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVesselDiameter()
	 * @generated
	 * @ordered
	 */
	protected static final Dimension VESSEL_DIAMETER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVesselDiameter() <em>Vessel Diameter</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVesselDiameter()
	 * @generated
	 * @ordered
	 */
	protected Dimension vesselDiameter = VESSEL_DIAMETER_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected BendImpl()
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
		return ModelPackage.Literals.BEND;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BendPlace getWhere()
	{
		return where;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setWhere(BendPlace newWhere)
	{
		BendPlace oldWhere = where;
		where = newWhere == null ? WHERE_EDEFAULT : newWhere;
		boolean oldWhereESet = whereESet;
		whereESet = true;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BEND__WHERE, oldWhere, where, !oldWhereESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void unsetWhere()
	{
		BendPlace oldWhere = where;
		boolean oldWhereESet = whereESet;
		where = WHERE_EDEFAULT;
		whereESet = false;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.UNSET, ModelPackage.BEND__WHERE, oldWhere, WHERE_EDEFAULT, oldWhereESet));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean isSetWhere()
	{
		return whereESet;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getRadius()
	{
		return radius;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setRadius(Dimension newRadius)
	{
		Dimension oldRadius = radius;
		radius = newRadius;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BEND__RADIUS, oldRadius, radius));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public BigDecimal getAngleDegrees()
	{
		return angleDegrees;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setAngleDegrees(BigDecimal newAngleDegrees)
	{
		BigDecimal oldAngleDegrees = angleDegrees;
		angleDegrees = newAngleDegrees;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BEND__ANGLE_DEGREES, oldAngleDegrees, angleDegrees));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Dimension getVesselDiameter()
	{
		return vesselDiameter;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVesselDiameter(Dimension newVesselDiameter)
	{
		Dimension oldVesselDiameter = vesselDiameter;
		vesselDiameter = newVesselDiameter;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.BEND__VESSEL_DIAMETER, oldVesselDiameter, vesselDiameter));
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
			case ModelPackage.BEND__WHERE:
				return getWhere();
			case ModelPackage.BEND__RADIUS:
				return getRadius();
			case ModelPackage.BEND__ANGLE_DEGREES:
				return getAngleDegrees();
			case ModelPackage.BEND__VESSEL_DIAMETER:
				return getVesselDiameter();
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
			case ModelPackage.BEND__WHERE:
				setWhere((BendPlace)newValue);
				return;
			case ModelPackage.BEND__RADIUS:
				setRadius((Dimension)newValue);
				return;
			case ModelPackage.BEND__ANGLE_DEGREES:
				setAngleDegrees((BigDecimal)newValue);
				return;
			case ModelPackage.BEND__VESSEL_DIAMETER:
				setVesselDiameter((Dimension)newValue);
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
			case ModelPackage.BEND__WHERE:
				unsetWhere();
				return;
			case ModelPackage.BEND__RADIUS:
				setRadius(RADIUS_EDEFAULT);
				return;
			case ModelPackage.BEND__ANGLE_DEGREES:
				setAngleDegrees(ANGLE_DEGREES_EDEFAULT);
				return;
			case ModelPackage.BEND__VESSEL_DIAMETER:
				setVesselDiameter(VESSEL_DIAMETER_EDEFAULT);
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
			case ModelPackage.BEND__WHERE:
				return isSetWhere();
			case ModelPackage.BEND__RADIUS:
				return RADIUS_EDEFAULT == null ? radius != null : !RADIUS_EDEFAULT.equals(radius);
			case ModelPackage.BEND__ANGLE_DEGREES:
				return ANGLE_DEGREES_EDEFAULT == null ? angleDegrees != null : !ANGLE_DEGREES_EDEFAULT.equals(angleDegrees);
			case ModelPackage.BEND__VESSEL_DIAMETER:
				return VESSEL_DIAMETER_EDEFAULT == null ? vesselDiameter != null : !VESSEL_DIAMETER_EDEFAULT.equals(vesselDiameter);
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
		result.append(" (where: ");
		if (whereESet) result.append(where); else result.append("<unset>");
		result.append(", radius: ");
		result.append(radius);
		result.append(", angleDegrees: ");
		result.append(angleDegrees);
		result.append(", vesselDiameter: ");
		result.append(vesselDiameter);
		result.append(')');
		return result.toString();
	}

} //BendImpl
