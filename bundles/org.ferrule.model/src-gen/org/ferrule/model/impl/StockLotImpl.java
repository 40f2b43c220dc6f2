/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.ferrule.model.ModelPackage;
import org.ferrule.model.StockLot;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Stock Lot</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.impl.StockLotImpl#getLot <em>Lot</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockLotImpl#getExpiry <em>Expiry</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockLotImpl#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockLotImpl#getLocation <em>Location</em>}</li>
 *   <li>{@link org.ferrule.model.impl.StockLotImpl#getSerial <em>Serial</em>}</li>
 * </ul>
 *
 * @generated
 */
public class StockLotImpl extends ElementImpl implements StockLot
{
	/**
	 * The default value of the '{@link #getLot() <em>Lot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLot()
	 * @generated
	 * @ordered
	 */
	protected static final String LOT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLot() <em>Lot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLot()
	 * @generated
	 * @ordered
	 */
	protected String lot = LOT_EDEFAULT;

	/**
	 * The default value of the '{@link #getExpiry() <em>Expiry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExpiry()
	 * @generated
	 * @ordered
	 */
	protected static final String EXPIRY_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getExpiry() <em>Expiry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getExpiry()
	 * @generated
	 * @ordered
	 */
	protected String expiry = EXPIRY_EDEFAULT;

	/**
	 * The default value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected static final int QUANTITY_EDEFAULT = 1;

	/**
	 * The cached value of the '{@link #getQuantity() <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getQuantity()
	 * @generated
	 * @ordered
	 */
	protected int quantity = QUANTITY_EDEFAULT;

	/**
	 * The default value of the '{@link #getLocation() <em>Location</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLocation()
	 * @generated
	 * @ordered
	 */
	protected static final String LOCATION_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLocation() <em>Location</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLocation()
	 * @generated
	 * @ordered
	 */
	protected String location = LOCATION_EDEFAULT;

	/**
	 * The default value of the '{@link #getSerial() <em>Serial</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSerial()
	 * @generated
	 * @ordered
	 */
	protected static final String SERIAL_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSerial() <em>Serial</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSerial()
	 * @generated
	 * @ordered
	 */
	protected String serial = SERIAL_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected StockLotImpl()
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
		return ModelPackage.Literals.STOCK_LOT;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLot()
	{
		return lot;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLot(String newLot)
	{
		String oldLot = lot;
		lot = newLot;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_LOT__LOT, oldLot, lot));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getExpiry()
	{
		return expiry;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setExpiry(String newExpiry)
	{
		String oldExpiry = expiry;
		expiry = newExpiry;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_LOT__EXPIRY, oldExpiry, expiry));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public int getQuantity()
	{
		return quantity;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setQuantity(int newQuantity)
	{
		int oldQuantity = quantity;
		quantity = newQuantity;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_LOT__QUANTITY, oldQuantity, quantity));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getLocation()
	{
		return location;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLocation(String newLocation)
	{
		String oldLocation = location;
		location = newLocation;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_LOT__LOCATION, oldLocation, location));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSerial()
	{
		return serial;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSerial(String newSerial)
	{
		String oldSerial = serial;
		serial = newSerial;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, ModelPackage.STOCK_LOT__SERIAL, oldSerial, serial));
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
			case ModelPackage.STOCK_LOT__LOT:
				return getLot();
			case ModelPackage.STOCK_LOT__EXPIRY:
				return getExpiry();
			case ModelPackage.STOCK_LOT__QUANTITY:
				return getQuantity();
			case ModelPackage.STOCK_LOT__LOCATION:
				return getLocation();
			case ModelPackage.STOCK_LOT__SERIAL:
				return getSerial();
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
			case ModelPackage.STOCK_LOT__LOT:
				setLot((String)newValue);
				return;
			case ModelPackage.STOCK_LOT__EXPIRY:
				setExpiry((String)newValue);
				return;
			case ModelPackage.STOCK_LOT__QUANTITY:
				setQuantity((Integer)newValue);
				return;
			case ModelPackage.STOCK_LOT__LOCATION:
				setLocation((String)newValue);
				return;
			case ModelPackage.STOCK_LOT__SERIAL:
				setSerial((String)newValue);
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
			case ModelPackage.STOCK_LOT__LOT:
				setLot(LOT_EDEFAULT);
				return;
			case ModelPackage.STOCK_LOT__EXPIRY:
				setExpiry(EXPIRY_EDEFAULT);
				return;
			case ModelPackage.STOCK_LOT__QUANTITY:
				setQuantity(QUANTITY_EDEFAULT);
				return;
			case ModelPackage.STOCK_LOT__LOCATION:
				setLocation(LOCATION_EDEFAULT);
				return;
			case ModelPackage.STOCK_LOT__SERIAL:
				setSerial(SERIAL_EDEFAULT);
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
			case ModelPackage.STOCK_LOT__LOT:
				return LOT_EDEFAULT == null ? lot != null : !LOT_EDEFAULT.equals(lot);
			case ModelPackage.STOCK_LOT__EXPIRY:
				return EXPIRY_EDEFAULT == null ? expiry != null : !EXPIRY_EDEFAULT.equals(expiry);
			case ModelPackage.STOCK_LOT__QUANTITY:
				return quantity != QUANTITY_EDEFAULT;
			case ModelPackage.STOCK_LOT__LOCATION:
				return LOCATION_EDEFAULT == null ? location != null : !LOCATION_EDEFAULT.equals(location);
			case ModelPackage.STOCK_LOT__SERIAL:
				return SERIAL_EDEFAULT == null ? serial != null : !SERIAL_EDEFAULT.equals(serial);
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
		result.append(" (lot: ");
		result.append(lot);
		result.append(", expiry: ");
		result.append(expiry);
		result.append(", quantity: ");
		result.append(quantity);
		result.append(", location: ");
		result.append(location);
		result.append(", serial: ");
		result.append(serial);
		result.append(')');
		return result.toString();
	}

} //StockLotImpl
